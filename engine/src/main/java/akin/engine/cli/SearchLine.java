package akin.engine.cli;

import akin.engine.assess.Solver;
import akin.engine.report.Wrap;
import java.io.PrintWriter;
import java.util.function.Consumer;
import java.util.function.LongSupplier;

/**
 * One line on a terminal that says what is searched and how far it is: not before a search has taken a second, and not more often
 * than can be read. Thread-safe.
 */
final class SearchLine implements Consumer<Solver.Progress> {

    /** Nobody asks what goes on before, in nanoseconds. */
    private static final long PATIENCE = 1_000_000_000L;

    /** Between two changes of the line, in nanoseconds. */
    private static final long PAUSE = 100_000_000L;

    /** What a line longer than the terminal leaves behind cannot be taken away. */
    private static final int WIDTH = 79;

    private final PrintWriter terminal;
    private final LongSupplier clock;
    private final long start;
    private long last;
    private int shown;

    /**
     * A line; the search starts now.
     *
     * @param terminal where it is drawn
     * @param clock nanoseconds since any moment
     */
    SearchLine(PrintWriter terminal, LongSupplier clock) {
        this.terminal = terminal;
        this.clock = clock;
        this.start = clock.getAsLong();
        this.last = start;
    }

    @Override
    public synchronized void accept(Solver.Progress progress) {
        long now = clock.getAsLong();
        if (now - start < PATIENCE || now - last < PAUSE) {
            return;
        }
        last = now;
        String said = " searched, " + progress.judged() + " plans judged; an interrupt gives the best so far";
        String unit = Wrap.clean(progress.unit());
        String line = unit.substring(0, Math.min(unit.length(), WIDTH - said.length())) + said;
        terminal.print("\r" + line + " ".repeat(Math.max(0, shown - line.length())));
        terminal.flush();
        shown = line.length();
    }

    /** Takes the line away, if there is one. */
    synchronized void clear() {
        if (shown > 0) {
            terminal.print("\r" + " ".repeat(shown) + "\r");
            terminal.flush();
            shown = 0;
        }
    }
}
