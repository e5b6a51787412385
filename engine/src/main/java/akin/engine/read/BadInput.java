package akin.engine.read;

/**
 * The input, or the call, is wrong: one message for the person who wrote it, with its place.
 *
 * <p>The message says what was read, what is allowed and, where there is one, the nearest valid word. It is one line:
 * whatever stands in the file or in its name, no control character of it reaches a terminal.
 */
public final class BadInput extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String file;
    private final int line;
    private final int column;
    private final String problem;

    /** A problem at a place in a file. */
    public BadInput(String file, Place place, String problem) {
        super(Say.visible(file) + ":" + place.line() + ":" + place.column() + ": " + Say.visible(problem));
        this.file = file;
        this.line = place.line();
        this.column = place.column();
        this.problem = Say.visible(problem);
    }

    /** A problem with a file as a whole, or with the call. */
    public BadInput(String file, String problem) {
        super(Say.visible(file) + ": " + Say.visible(problem));
        this.file = file;
        this.line = 0;
        this.column = 0;
        this.problem = Say.visible(problem);
    }

    /** The file as it was named. */
    public String file() {
        return file;
    }

    /** The line, from 1; 0 when the problem has no line. */
    public int line() {
        return line;
    }

    /** The column, from 1; 0 when the problem has no line. */
    public int column() {
        return column;
    }

    /** What is wrong, without the place. */
    public String problem() {
        return problem;
    }

    /** No stack trace: this is a message for a person, and costs nothing to make. */
    @Override
    public synchronized Throwable fillInStackTrace() {
        return this;
    }
}
