package akin.engine.book;

import static org.assertj.core.api.Assertions.assertThat;

import akin.engine.assess.Assessment;
import akin.engine.assess.Unchecked;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * All that is said of the examples on a rule's page, by its own rule and the others: the numbers, each fix with its edits and
 * what else it would do, what could not be checked. A page says only what an example finds; whoever changes a number or a fix sees here
 * what it changes for whom. {@code -Dakin.golden=write} writes it anew.
 */
class PageAnswersTest {

    private static final Path ANSWERS = Path.of("src", "test", "resources", "akin", "answers");

    static List<String> ids() {
        return RulePagesTest.ids();
    }

    @ParameterizedTest
    @MethodSource("ids")
    void everyExampleIsAnsweredAsBefore(String id) throws IOException {
        StringBuilder answers = new StringBuilder();
        int number = 0;
        for (Pages.Example example : RulePagesTest.examples(id)) {
            number++;
            answers.append(example.fires() ? "fires " : "stays quiet ")
                    .append(number)
                    .append('\n');
            say(answers, RulePagesTest.assessed(id, example));
        }
        Path file = ANSWERS.resolve(id + ".txt");
        if ("write".equals(System.getProperty("akin.golden"))) {
            Files.createDirectories(file.getParent());
            Files.writeString(file, answers);
        }
        assertThat(file).content().as("run the build with -Dakin.golden=write").isEqualTo(answers.toString());
    }

    private static void say(StringBuilder answers, Assessment assessment) {
        for (Assessment.Entry entry : assessment.findings()) {
            answers.append("  %s %s %s: %s\n"
                    .formatted(
                            entry.severity().word(),
                            entry.rule(),
                            String.join(" ", entry.units()),
                            entry.path().isEmpty() ? "the rig" : entry.path()));
            answers.append("    ").append(entry.because()).append('\n');
            for (Assessment.Remedy fix : entry.fixes()) {
                answers.append("    - ").append(fix.effect()).append('\n');
                for (Assessment.Change edit : fix.edits()) {
                    answers.append("      ")
                            .append(edit.path())
                            .append(": ")
                            .append(edit.from())
                            .append(" -> ")
                            .append(edit.to())
                            .append('\n');
                }
                fix.sideEffects()
                        .forEach(effect ->
                                answers.append("      then: ").append(effect).append('\n'));
            }
        }
        for (Unchecked gap : assessment.unchecked()) {
            answers.append("  unchecked %s %s: %s\n".formatted(gap.rule(), gap.unit(), gap.missing()));
        }
    }
}
