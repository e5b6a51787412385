package akin.engine.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.function.IntConsumer;

/** A bar on a terminal that shows how much of a long job is done; drawn anew only when a per cent more is. Thread-safe. */
final class Progress implements IntConsumer {

    private static final int CELLS = 40;
    private static final int WHOLE = 100;

    private final PrintWriter terminal;
    private final long size;
    private final String what;
    private int shown = -1;

    /**
     * A bar.
     *
     * @param terminal where it is drawn
     * @param size how much there is to do, over 0
     * @param what of what, in the plural
     */
    Progress(PrintWriter terminal, long size, String what) {
        this.terminal = terminal;
        this.size = size;
        this.what = what;
    }

    @Override
    public synchronized void accept(int done) {
        int percent = (int) (done * (long) WHOLE / size);
        if (percent > shown) {
            shown = percent;
            int full = percent * CELLS / WHOLE;
            terminal.print(String.format(
                    Locale.ROOT,
                    "\r[%s%s] %3d %% of %,d %s",
                    "#".repeat(full),
                    ".".repeat(CELLS - full),
                    percent,
                    size,
                    what));
            terminal.flush();
        }
    }

    /** Takes the bar away. */
    synchronized void clear() {
        terminal.print("\r" + " ".repeat(CELLS + what.length() + 30) + "\r");
        terminal.flush();
    }
}
