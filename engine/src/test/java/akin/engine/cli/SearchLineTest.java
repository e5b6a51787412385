package akin.engine.cli;

import static org.assertj.core.api.Assertions.assertThat;

import akin.engine.assess.Solver;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

/** What a terminal shows while settings are searched; the test turns the clock. */
class SearchLineTest {

    private static final long MILLISECOND = 1_000_000;

    private final StringWriter terminal = new StringWriter();
    private final AtomicLong now = new AtomicLong(-5);
    private final SearchLine line = new SearchLine(new PrintWriter(terminal), now::get);

    private String after(long milliseconds, String unit, int judged) {
        now.addAndGet(milliseconds * MILLISECOND);
        terminal.getBuffer().setLength(0);
        line.accept(new Solver.Progress(unit, judged));
        return terminal.toString();
    }

    private String cleared() {
        terminal.getBuffer().setLength(0);
        line.clear();
        return terminal.toString();
    }

    @Test
    void aShortSearchIsNotSpokenOf() {
        assertThat(after(999, "B", 500)).isEmpty();
        assertThat(cleared()).isEmpty();
    }

    @Test
    void aLongerOneSaysWhatItIsAtAndIsTakenAway() {
        String first = "B searched, 1500 plans judged; an interrupt gives the best so far";
        assertThat(after(1000, "B", 1500)).isEqualTo("\r" + first);
        assertThat(after(99, "B", 1501)).as("too soon to be read").isEmpty();
        assertThat(after(1, "C", 2))
                .as("what was longer is covered")
                .isEqualTo("\rC searched, 2 plans judged; an interrupt gives the best so far   ");
        assertThat(cleared()).isEqualTo("\r" + " ".repeat(first.length() - 3) + "\r");
        assertThat(cleared()).as("once").isEmpty();
    }

    @Test
    void noNameSteersTheTerminalOrLeavesTheLine() {
        String drawn = after(2000, "\u001b[2J" + "long".repeat(40), 1);
        assertThat(drawn).doesNotContain("\u001b").endsWith("so far").hasSize(80);
    }
}
