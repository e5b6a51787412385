package akin.engine.equip;

import akin.engine.read.BadInput;
import akin.engine.read.Document;
import akin.engine.read.Node;
import akin.engine.read.Say;
import akin.model.quantity.Mired;
import akin.model.quantity.NeutralDensity;
import akin.model.quantity.Percent;
import akin.model.quantity.QuantityException;
import akin.model.quantity.Shutter;
import akin.model.quantity.Stops;
import akin.model.quantity.Timespan;
import akin.model.rig.Tolerance;
import akin.model.rig.Tolerances;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** Reads a tolerance profile, and the limits that a production sets otherwise. */
final class ToleranceReader {

    private static final Pattern COUNT = Pattern.compile("([0-9]{1,6}(?:\\.[0-9]{1,6})?)(?: [a-z]+)?");

    private ToleranceReader() {}

    static Tolerances read(
            Document rig, Catalogue catalogue, String profile, String path, Map<String, Node.Scalar> overrides) {
        Document document = catalogue.tolerances(profile).orElseThrow(() -> {
            List<String> words = catalogue.ids("tolerances");
            String problem = "no tolerance profile is called " + Say.quote(profile) + "." + Say.nearest(profile, words)
                    + " Allowed: " + Say.list(words);
            return path.isEmpty() ? new BadInput("--tolerance", problem) : rig.error(path, problem);
        });
        Map<Tolerance, Double> limits = limits(document);
        overrides.forEach((key, limit) -> put(limits, rig, "tolerances." + key, key, limit.text()));
        return new Tolerances(profile, limits);
    }

    /** The limits of a profile; every one must be there. */
    static Map<Tolerance, Double> limits(Document document) {
        Map<Tolerance, Double> limits = new EnumMap<>(Tolerance.class);
        if (document.at("limits").orElse(null) instanceof Node.Fields fields) {
            fields.fields().forEach((key, field) -> {
                String text = field.value() instanceof Node.Scalar scalar ? scalar.text() : "";
                put(limits, document, "limits." + key, key, text);
            });
        }
        for (Tolerance tolerance : Tolerance.values()) {
            if (!limits.containsKey(tolerance)) {
                throw document.error("limits", "the limit " + Say.quote(tolerance.key()) + " is missing");
            }
        }
        return limits;
    }

    private static void put(Map<Tolerance, Double> limits, Document document, String path, String key, String text) {
        Tolerance tolerance = Arrays.stream(Tolerance.values())
                .filter(t -> t.key().equals(key))
                .findFirst()
                .orElseThrow(() -> {
                    List<String> words = Arrays.stream(Tolerance.values())
                            .map(Tolerance::key)
                            .toList();
                    return new BadInput(
                            document.file(),
                            document.keyOf(path).orElseGet(() -> document.placeOf(path)),
                            "no tolerance is called " + Say.quote(key) + "." + Say.nearest(key, words) + " Allowed: "
                                    + Say.list(words));
                });
        double limit;
        try {
            limit = switch (tolerance.unit()) {
                case "%" -> Percent.parse(text).value();
                case "stops" -> Stops.parse(text).value();
                case "mired" -> Mired.parse(text).value();
                case "ms" -> Timespan.parse(text).milliseconds();
                case "s" -> Timespan.parse(text).milliseconds() / 1000;
                case "density" -> NeutralDensity.parse(text).density();
                case "°" -> degrees(text);
                default -> count(text, tolerance.unit());
            };
        } catch (QuantityException e) {
            throw document.error(path, Say.of(e));
        }
        if (!(limit > 0)) {
            throw document.error(path, "read " + Say.quote(text) + "; a tolerance is over 0");
        }
        if (limit > tolerance.most()) {
            throw document.error(
                    path,
                    "read " + Say.quote(text) + "; " + tolerance.key() + " is at most " + (int) tolerance.most() + " "
                            + tolerance.unit());
        }
        limits.put(tolerance, limit);
    }

    private static double degrees(String text) {
        if (Shutter.parse(text) instanceof Shutter.Angle angle) {
            return angle.degrees().doubleValue();
        }
        throw new QuantityException("angle", text, "an angle such as 144°", null);
    }

    private static double count(String text, String unit) {
        var matcher = COUNT.matcher(text);
        if (!matcher.matches()) {
            throw new QuantityException(
                    unit.isEmpty() ? "number" : "number of " + unit,
                    text,
                    "a number, such as " + ("2 " + unit).strip(),
                    null);
        }
        return new BigDecimal(matcher.group(1)).doubleValue();
    }
}
