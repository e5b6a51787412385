package akin.engine.report;

import akin.model.finding.Severity;

/** How a terminal stresses words. Nothing is told by it alone. */
public enum Style {
    /** No stress at all. */
    PLAIN {
        @Override
        String strong(String text) {
            return text;
        }

        @Override
        String stress(String text, Severity severity) {
            return text;
        }
    },
    /** Bold, and headings turned about. */
    COLOUR {
        @Override
        String strong(String text) {
            return "\u001B[1m" + text + "\u001B[0m";
        }

        @Override
        String stress(String text, Severity severity) {
            String code = severity == Severity.BAKED_IN ? "7" : "4";
            return "\u001B[" + code + "m" + text + "\u001B[0m";
        }
    };

    abstract String strong(String text);

    abstract String stress(String text, Severity severity);
}
