package akin.engine.book;

import static org.assertj.core.api.Assertions.assertThat;

import akin.engine.report.PageReport;
import akin.model.finding.Severity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The index of rules in the documentation is generated from the pages. {@code -Dakin.golden=write} writes it anew. */
class RuleIndexTest {

    private static final Path INDEX = Path.of("..", "rules", "RULES.md");

    @Test
    void theIndexIsInStepWithThePages() throws IOException {
        String index = index(CompiledBook.load());
        if ("write".equals(System.getProperty("akin.golden"))) {
            Files.writeString(INDEX, index);
        }
        assertThat(INDEX).content().as("run the build with -Dakin.golden=write").isEqualTo(index);
    }

    private static String index(RuleBook book) {
        StringBuilder out = new StringBuilder("""
                # The rule book

                Generated from the rule pages; change a page and run the build with `-Dakin.golden=write`.
                """);
        for (String topic : RuleBook.TOPICS) {
            List<RulePage> pages = book.pages().stream()
                    .filter(page -> page.topic().equals(topic))
                    .toList();
            if (!pages.isEmpty()) {
                out.append("\n## ").append(topic).append("\n\n| rule | finds | severities |\n|---|---|---|\n");
            }
            for (RulePage page : pages) {
                out.append("| [")
                        .append(page.id())
                        .append("](src/main/resources/akin/rules/")
                        .append(page.id())
                        .append(".md) | ")
                        .append(PageReport.inWords(page.title()).replaceAll("<([a-z0-9-]+)>", "*$1*"))
                        .append(" | ")
                        .append(page.severities().stream().map(Severity::word).collect(Collectors.joining(", ")))
                        .append(" |\n");
            }
        }
        return out.toString();
    }
}
