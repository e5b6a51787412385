package akin.engine.cli;

import java.util.Set;
import org.apache.commons.cli.Options;

/** One command of the program, such as {@code check}. */
interface Command {

    /** The word that calls it. */
    String name();

    /** What stands behind the word: arguments, as a usage line shows them. */
    String arguments();

    /** What it does, in a sentence. */
    String purpose();

    /** Its options, without help and version, which all have. */
    Options options();

    /** The long names of the options that may stand there more than once. */
    default Set<String> repeatable() {
        return Set.of();
    }

    /**
     * Runs it.
     *
     * @param call the options and arguments it was called with
     * @return the exit code
     * @throws akin.engine.read.BadInput when the input or the call is wrong
     */
    int run(Call call);
}
