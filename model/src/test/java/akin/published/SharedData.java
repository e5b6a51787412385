package akin.published;

import akin.model.colour.Chromaticity;
import akin.model.colour.ColourFilter;
import akin.model.colour.Gamut;
import akin.model.tone.CodeScale;
import akin.model.tone.CurveForm;
import akin.model.tone.Encoding;
import akin.model.tone.Piece;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** The shipped encodings and gamuts, read for tests; strict, so that a slip in a data file fails here already. */
public final class SharedData {
    private static final Path SHARED = Path.of("..", "shared");

    private SharedData() {}

    /** Every encoding file, by id, in order of id. */
    public static Map<String, Encoding> encodings() {
        Map<String, Encoding> encodings = new LinkedHashMap<>();
        try (Stream<Path> files = Files.list(SHARED.resolve("encodings"))) {
            for (Path file : files.sorted().toList()) {
                Encoding encoding = encoding(file);
                if (!file.getFileName().toString().equals(encoding.id() + ".yaml")) {
                    throw new IllegalStateException(file + " has the id " + encoding.id());
                }
                encodings.put(encoding.id(), encoding);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        if (encodings.isEmpty()) {
            throw new IllegalStateException("no encodings");
        }
        return encodings;
    }

    public static Encoding encoding(String id) {
        return encoding(SHARED.resolve("encodings").resolve(id + ".yaml"));
    }

    /** Every gamut by id. */
    public static Map<String, Gamut> gamuts() {
        Fields file = new Fields(load(SHARED.resolve("gamuts.yaml")));
        file.version("akin-gamuts");
        Map<String, Gamut> gamuts = new LinkedHashMap<>();
        for (Object each : (List<?>) file.take("gamuts")) {
            Fields fields = new Fields(each);
            Gamut gamut = new Gamut(
                    fields.text("id"),
                    fields.text("name"),
                    chromaticity(fields.take("red")),
                    chromaticity(fields.take("green")),
                    chromaticity(fields.take("blue")),
                    chromaticity(fields.take("white")),
                    fields.text("source"));
            fields.end();
            gamuts.put(gamut.id(), gamut);
        }
        file.end();
        return gamuts;
    }

    /** Every colour filter. */
    public static List<ColourFilter> filters() {
        Fields file = new Fields(load(SHARED.resolve("colour-filters.yaml")));
        file.version("akin-colour-filters");
        List<ColourFilter> filters = new ArrayList<>();
        for (Object each : (List<?>) file.take("filters")) {
            Fields fields = new Fields(each);
            filters.add(new ColourFilter(
                    fields.text("id"),
                    fields.text("name"),
                    fields.number("mired-shift"),
                    fields.has("loss-stops") ? fields.number("loss-stops") : null,
                    fields.text("source")));
            fields.end();
        }
        file.end();
        return filters;
    }

    private static Chromaticity chromaticity(Object value) {
        Fields fields = new Fields(value);
        Chromaticity result = new Chromaticity(fields.number("x"), fields.number("y"));
        fields.end();
        return result;
    }

    private static Encoding encoding(Path path) {
        Fields file = new Fields(load(path));
        file.version("akin-encoding");
        List<Piece> pieces = new ArrayList<>();
        for (Object each : (List<?>) file.take("pieces")) {
            Fields piece = new Fields(each);
            pieces.add(Piece.of(
                    piece.has("until") ? piece.number("until") : null,
                    piece.has("linear") ? linear(new Fields(piece.take("linear"))) : null,
                    piece.has("log") ? log(new Fields(piece.take("log"))) : null,
                    piece.has("power") ? power(new Fields(piece.take("power"))) : null,
                    piece.has("pq") ? pq(new Fields(piece.take("pq"))) : null));
            piece.end();
        }
        Encoding encoding = new Encoding(
                file.text("id"),
                file.text("name"),
                Encoding.Kind.valueOf(file.text("kind").toUpperCase(Locale.ROOT)),
                pieces,
                file.has("input-scale") ? file.number("input-scale") : 1,
                file.has("reference-white") ? file.number("reference-white") : null,
                CodeScale.valueOf(file.text("code-scale").toUpperCase(Locale.ROOT)),
                file.has("clip-code") ? file.number("clip-code") : null,
                file.text("source"),
                file.has("note") ? file.text("note") : null);
        file.end();
        return encoding;
    }

    private static CurveForm.Linear linear(Fields f) {
        CurveForm.Linear form = new CurveForm.Linear(f.number("slope"), f.number("offset"));
        f.end();
        return form;
    }

    private static CurveForm.Log log(Fields f) {
        CurveForm.Log form = new CurveForm.Log(
                f.number("base"), f.number("scale"), f.number("gain"), f.number("shift"), f.number("offset"));
        f.end();
        return form;
    }

    private static CurveForm.Power power(Fields f) {
        CurveForm.Power form = new CurveForm.Power(
                f.number("scale"), f.number("gain"), f.number("shift"), f.number("exponent"), f.number("offset"));
        f.end();
        return form;
    }

    private static CurveForm.Pq pq(Fields f) {
        CurveForm.Pq form = new CurveForm.Pq(f.number("peak"));
        f.end();
        return form;
    }

    private static Object load(Path path) {
        try {
            return new Load(LoadSettings.builder().build()).loadFromString(Files.readString(path));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A mapping whose keys must all be taken. */
    private static final class Fields {
        private final Map<?, ?> values;
        private final Set<Object> left;

        Fields(Object mapping) {
            values = (Map<?, ?>) mapping;
            left = new HashSet<>(values.keySet());
        }

        boolean has(String key) {
            return values.containsKey(key);
        }

        Object take(String key) {
            if (!left.remove(key)) {
                throw new IllegalStateException("no " + key + " in " + values);
            }
            return values.get(key);
        }

        String text(String key) {
            return (String) take(key);
        }

        double number(String key) {
            return ((Number) take(key)).doubleValue();
        }

        void version(String key) {
            if (!Integer.valueOf(1).equals(take(key))) {
                throw new IllegalStateException(key + " must be 1");
            }
        }

        void end() {
            if (!left.isEmpty()) {
                throw new IllegalStateException("unknown keys " + left);
            }
        }
    }
}
