package akin.engine.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/** One call of the command line with what it printed. */
record Run(int code, String out, String err) {

    static Run of(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Akin.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
        return new Run(code, out.toString(), err.toString());
    }
}
