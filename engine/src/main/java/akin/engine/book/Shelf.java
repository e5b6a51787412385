package akin.engine.book;

import akin.engine.read.Document;
import akin.engine.read.YamlReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** The pages as they were written, packaged with the rules. */
public final class Shelf {

    private static final String ROOT = "/akin/rules/";
    private static final String PAIR = "matched-pair.yaml";

    private Shelf() {}

    /** The Markdown of a rule's page; empty when there is no such rule. */
    public static Optional<String> page(String rule) {
        return rule.matches("[a-z-]+/[a-z-]+") ? text(rule + ".md") : Optional.empty();
    }

    /** The rig that the examples of pages are changes to. */
    public static Document matchedPair() {
        return YamlReader.read(
                PAIR, text(PAIR).orElseThrow(() -> new IllegalStateException("the matched pair is missing")));
    }

    private static Optional<String> text(String name) {
        try (InputStream in = Shelf.class.getResourceAsStream(ROOT + name)) {
            return in == null ? Optional.empty() : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
