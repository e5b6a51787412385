package akin.engine.book;

import akin.engine.read.BadInput;
import akin.engine.read.Binder;
import akin.engine.read.Document;
import akin.engine.read.Say;
import akin.engine.read.YamlReader;
import akin.model.finding.Severity;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads rule pages as they are written: Markdown with front matter, and examples under two headings. */
public final class Pages {

    private static final Pattern FRONT = Pattern.compile("\\A---\\n(.*?\\n)---\\n(.*)\\z", Pattern.DOTALL);
    private static final Pattern SECTION = Pattern.compile("(?m)^## (.+)$");
    private static final Pattern FENCE = Pattern.compile("(?ms)^```yaml\\n(.*?)^```$");

    private Pages() {}

    /** The front matter as it is written. */
    record Front(
            @JsonProperty(required = true) String id,
            @JsonProperty(required = true) String title,
            @JsonProperty(required = true) String because,
            @JsonProperty(required = true) List<String> severities,
            @JsonProperty(required = true) String scope,
            @JsonProperty(required = true) List<String> needs,
            Map<String, String> fixes,
            @JsonProperty(required = true) List<String> sources) {}

    /**
     * An example on a page: changes to the matched pair, written as a rig file.
     *
     * @param fires true under "Fires", false under "Stays quiet"
     * @param line line of the page that its first line is on
     * @param text the YAML
     */
    public record Example(boolean fires, int line, String text) {}

    /** The front matter of a page. */
    public static RulePage front(String file, String page, Binder binder) {
        Matcher parts = parts(file, page);
        Document document = YamlReader.read(file, "\n" + parts.group(1));
        Front front = binder.bind(document, Front.class);
        List<Severity> severities = new ArrayList<>();
        for (String word : front.severities()) {
            try {
                severities.add(Severity.of(word));
            } catch (IllegalArgumentException e) {
                throw document.error("severities", Say.of(e));
            }
        }
        RulePage.Scope scope;
        try {
            scope = RulePage.Scope.of(front.scope());
        } catch (IllegalArgumentException e) {
            throw document.error("scope", Say.of(e));
        }
        return new RulePage(
                front.id(),
                front.title(),
                front.because(),
                List.copyOf(severities),
                scope,
                List.copyOf(front.needs()),
                front.fixes(),
                List.copyOf(front.sources()));
    }

    /** A page without its front matter. */
    public static String body(String file, String page) {
        return parts(file, page).group(2).strip() + "\n";
    }

    /** The examples of a page, in its order. */
    public static List<Example> examples(String file, String page) {
        String body = parts(file, page).group(2);
        int start = page.length() - body.length();
        List<Example> examples = new ArrayList<>();
        Matcher fences = FENCE.matcher(body);
        while (fences.find()) {
            String section = section(body, fences.start());
            if (section.equals("Fires") || section.equals("Stays quiet")) {
                int line = (int) page.substring(0, start + fences.start(1))
                                .chars()
                                .filter(c -> c == '\n')
                                .count()
                        + 1;
                examples.add(new Example(section.equals("Fires"), line, fences.group(1)));
            }
        }
        return List.copyOf(examples);
    }

    private static String section(String body, int at) {
        String section = "";
        Matcher headings = SECTION.matcher(body);
        while (headings.find() && headings.start() < at) {
            section = headings.group(1).strip();
        }
        return section;
    }

    private static Matcher parts(String file, String page) {
        Matcher parts = FRONT.matcher(page);
        if (!parts.matches()) {
            throw new BadInput(file, "a rule page starts with front matter between two lines of ---");
        }
        return parts;
    }
}
