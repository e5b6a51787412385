package akin.engine.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;

/** The one line that a bad call or a bad file must give, and nothing else. */
record Said(String file, String line) {

    private static final int LONGEST = 600;

    /**
     * Checks what holds of every complaint.
     *
     * @param file the file, or part of the call, that it must name
     */
    static Said of(Run run, String file) {
        assertThat(run.err()).as("one line").endsWith(System.lineSeparator()).hasLineCount(1);
        assertThat(run.code()).as(run.err()).isEqualTo(Akin.BAD_INPUT);
        assertThat(run.out()).as("on the way to a report").isEmpty();
        String line = run.err().strip();
        assertThat(line).startsWith("akin: " + file + ":");
        String message = line.substring(("akin: " + file + ":").length());
        assertThat(message.length()).as(message).isLessThan(LONGEST);
        assertThat(message.chars().noneMatch(Character::isISOControl))
                .as("no control characters: %s", message)
                .isTrue();
        assertThat(message)
                .as("no words of the program's own workings")
                .doesNotContainPattern("\\b(?:java|tools|akin|org)\\.[a-z]+\\.")
                .doesNotContain("Exception", "Cannot ", "deserialize", "null pointer");
        return new Said(file, line);
    }

    /** The place must be this, a pattern. */
    Said isAt(String lineAndColumn) {
        assertThat(line.substring(("akin: " + file + ":").length())).matches("(?s)" + lineAndColumn + ": .*");
        return this;
    }

    /** All of these must be in it. */
    Said says(List<String> words) {
        assertThat(line).contains(words);
        return this;
    }
}
