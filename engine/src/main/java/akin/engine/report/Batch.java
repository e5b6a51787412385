package akin.engine.report;

import akin.engine.assess.Assessment;
import akin.engine.assess.Checked;
import akin.engine.assess.FailOn;
import akin.engine.assess.Verdict;
import akin.engine.baseline.Baseline;
import akin.engine.book.RuleBook;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What one call of {@code akin check} came to. Every format is rendered from this and nothing else.
 *
 * @param version version of Akin
 * @param book the rules that were gone by
 * @param failOn the least urgent thing that fails
 * @param one true when one rig file was asked for by its name: its report then stands by itself, without a summary
 * @param parts the rig files, in the order of the report
 * @param passedOver how many YAML files in the folders that were named are no rigs
 * @param baseline what became of the baseline; null when there was none
 */
public record Batch(
        String version,
        RuleBook book,
        FailOn failOn,
        boolean one,
        List<Part> parts,
        int passedOver,
        Baseline.@Nullable Comparison baseline) {

    /** The word for a rig file that could not be read. */
    static final String NOT_READ = "not-read";

    /** Copies the list. */
    public Batch {
        parts = List.copyOf(parts);
    }

    /** One rig file. */
    public sealed interface Part {

        /** The rig file as it is named in reports. */
        String file();

        /** What it comes to, in a word. */
        String verdict();
    }

    /**
     * A rig file that was assessed.
     *
     * @param checked the assessment and what it was made from
     */
    public record Read(Checked checked) implements Part {
        @Override
        public String file() {
            return assessment().file();
        }

        @Override
        public String verdict() {
            return assessment().verdict().word();
        }

        /** What there is to say of it. */
        public Assessment assessment() {
            return checked.assessment();
        }
    }

    /**
     * A rig file that could not be assessed.
     *
     * @param file the file as it was named
     * @param line where the problem is, from 1; 0 when it has no line
     * @param column where the problem is, from 1; 0 when it has no line
     * @param problem what is wrong, in one line
     */
    public record Unread(String file, int line, int column, String problem) implements Part {
        @Override
        public String verdict() {
            return NOT_READ;
        }

        /** The file with the place in it, as messages name it. */
        public String place() {
            return file + (line > 0 ? ":" + line + ":" + column : "");
        }
    }

    /** The rig files that were assessed. */
    List<Read> read() {
        return parts.stream()
                .filter(Read.class::isInstance)
                .map(Read.class::cast)
                .toList();
    }

    /** The rig files that could not be. */
    List<Unread> unread() {
        return parts.stream()
                .filter(Unread.class::isInstance)
                .map(Unread.class::cast)
                .toList();
    }

    /** True when every rig file could be assessed. */
    public boolean allRead() {
        return unread().isEmpty();
    }

    /** True when every rig file passes. */
    public boolean passes() {
        return allRead() && read().stream().allMatch(part -> part.assessment().verdict() == Verdict.PASSES);
    }

    /** True when the baseline itself fails the check. */
    boolean baselineFails() {
        return baseline != null && baseline.fails();
    }

    /** What it comes to, in the word of the worst of the rig files. */
    String verdict() {
        if (!allRead()) {
            return NOT_READ;
        }
        List<Verdict> verdicts =
                read().stream().map(part -> part.assessment().verdict()).toList();
        if (verdicts.contains(Verdict.FAILS)) {
            return Verdict.FAILS.word();
        }
        return (verdicts.contains(Verdict.INCOMPLETE) ? Verdict.INCOMPLETE : Verdict.PASSES).word();
    }
}
