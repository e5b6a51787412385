package akin.engine.read;

import akin.model.footage.Clip;
import akin.model.footage.ColourTags;
import akin.model.footage.Label;
import akin.model.footage.Scan;
import akin.model.footage.Sound;
import akin.model.gear.SignalRange;
import akin.model.quantity.FrameRate;
import akin.model.quantity.Frequency;
import akin.model.quantity.PictureSize;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * What is said of one clip, column by column, before it is known whose it is. Whatever a clip is read from, it comes through
 * here: a row of a table, what ffprobe prints, an example on a rule's page.
 */
public final class ClipSheet {

    /** The column of the clip's own file name; the only one that must be there. */
    public static final String CLIP = "clip";

    /** The columns, in the order of the documentation. */
    public static final List<String> COLUMNS = List.of(
            CLIP,
            "unit",
            "reel",
            "take",
            "rate",
            "average-rate",
            "picture",
            "pixel-shape",
            "bits",
            "primaries",
            "transfer",
            "matrix",
            "range",
            "scan",
            "timecode",
            "timecode-rate",
            "frames",
            "seconds",
            "audio-rate",
            "audio-seconds");

    /** What stands in the column audio-rate of a clip without sound. */
    static final String SILENT = "none";

    private static final Set<String> OPEN = Set.of("", "unknown", "unspecified", "reserved");
    private static final Pattern FRACTION = Pattern.compile("([1-9][0-9]{0,8})/([1-9][0-9]{0,8})");
    private static final Pattern SHAPE = Pattern.compile("([0-9]{1,6}(?:\\.[0-9]{1,6})?)(?:[:/]([0-9]{1,6}))?");
    private static final Pattern DECIMAL = Pattern.compile("[0-9]{1,9}(\\.[0-9]{1,9})?");
    private static final Pattern COUNT = Pattern.compile("[0-9]{1,10}");
    private static final Pattern TAG = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]{0,30}");
    private static final Map<String, SignalRange> RANGES = Map.of(
            "tv", SignalRange.LEGAL, "legal", SignalRange.LEGAL, "pc", SignalRange.FULL, "full", SignalRange.FULL);
    private static final Map<String, Scan> SCANS = Map.of(
            "progressive", Scan.PROGRESSIVE,
            "interlaced", Scan.INTERLACED,
            "tt", Scan.INTERLACED,
            "bb", Scan.INTERLACED,
            "tb", Scan.INTERLACED,
            "bt", Scan.INTERLACED);
    private static final int MOST_BITS = 32;

    private final Map<String, String> columns;
    private final BiFunction<String, String, BadInput> wrong;
    private final boolean strict;

    private ClipSheet(Map<String, String> columns, BiFunction<String, String, BadInput> wrong, boolean strict) {
        this.columns = new LinkedHashMap<>();
        this.wrong = wrong;
        this.strict = strict;
        columns.forEach((column, text) -> {
            if (!COLUMNS.contains(column)) {
                throw wrong.apply(
                        column,
                        "no column is called " + Say.quote(column) + "." + Say.nearest(column, COLUMNS) + " Allowed: "
                                + String.join(", ", COLUMNS));
            }
            if (!OPEN.contains(text.strip())) {
                this.columns.put(column, text.strip());
            }
        });
        if (file().isEmpty()) {
            throw wrong.apply(CLIP, "the name of the clip is missing");
        }
    }

    /**
     * A sheet that a person wrote: a value that cannot be read is an error.
     *
     * @param wrong makes the error of a column from what is wrong
     */
    public static ClipSheet strict(Map<String, String> columns, BiFunction<String, String, BadInput> wrong) {
        return new ClipSheet(columns, wrong, true);
    }

    /** A sheet that a program wrote: a value that cannot be read is one that is not known. */
    static ClipSheet lenient(Map<String, String> columns, BiFunction<String, String, BadInput> wrong) {
        return new ClipSheet(columns, wrong, false);
    }

    /** The name of the clip's file, without the way there. */
    public String file() {
        List<String> steps = steps();
        return steps.isEmpty() ? "" : steps.get(steps.size() - 1);
    }

    /** The folder that the clip lies in, where its name says so. */
    public Optional<String> folder() {
        List<String> steps = steps();
        return steps.size() < 2 ? Optional.empty() : Optional.of(steps.get(steps.size() - 2));
    }

    /** The unit that it says it is of. */
    public Optional<String> unit() {
        return Optional.ofNullable(columns.get("unit"));
    }

    /** The reel that it says it is from. */
    public Optional<String> reel() {
        return Optional.ofNullable(columns.get("reel"));
    }

    /** An error at one of its columns. */
    public BadInput error(String column, String problem) {
        return wrong.apply(column, problem);
    }

    private List<String> steps() {
        return List.of(columns.getOrDefault(CLIP, "").split("[/\\\\]+")).stream()
                .filter(step -> !step.isEmpty())
                .toList();
    }

    /**
     * The clip.
     *
     * @param unit name of the unit that shot it
     * @param label what reports call it
     * @throws BadInput at the first column that cannot be read, where a person wrote them
     */
    public Clip as(String unit, String label) {
        return new Clip(
                unit,
                label,
                file(),
                columns.get("reel"),
                columns.get("take"),
                value("rate", ClipSheet::rate),
                value("average-rate", ClipSheet::rate),
                value("picture", PictureSize::parse),
                value("pixel-shape", ClipSheet::shape),
                value("bits", ClipSheet::bits),
                new ColourTags(
                        value("primaries", ClipSheet::tag),
                        value("transfer", ClipSheet::tag),
                        value("matrix", ClipSheet::tag),
                        value("range", text -> word(text, RANGES, "legal (tv) or full (pc)"))),
                value("scan", text -> word(text, SCANS, "progressive or interlaced")),
                value("timecode", Label::new),
                value("timecode-rate", ClipSheet::rate),
                value("frames", ClipSheet::count),
                value("seconds", ClipSheet::decimal),
                sound());
    }

    private @Nullable Sound sound() {
        if (SILENT.equals(columns.get("audio-rate"))) {
            return new Sound(false, null, null);
        }
        Frequency rate = value("audio-rate", Frequency::parse);
        BigFraction seconds = value("audio-seconds", ClipSheet::decimal);
        return rate == null && seconds == null ? null : new Sound(true, rate, seconds);
    }

    private <T> @Nullable T value(String column, Function<String, T> read) {
        String text = columns.get(column);
        if (text == null) {
            return null;
        }
        try {
            return read.apply(text);
        } catch (IllegalArgumentException e) {
            if (strict) {
                throw wrong.apply(column, column + ": " + Say.of(e));
            }
            return null;
        }
    }

    private static BigFraction rate(String text) {
        Matcher fraction = FRACTION.matcher(text);
        // A file may be stamped for a rate that no camera has, so a fraction is taken as it is.
        return fraction.matches()
                ? BigFraction.of(Long.parseLong(fraction.group(1)), Long.parseLong(fraction.group(2)))
                : FrameRate.parse(text).fraction();
    }

    private static BigFraction shape(String text) {
        Matcher shape = SHAPE.matcher(text);
        if (shape.matches()) {
            BigFraction width = exact(shape.group(1));
            BigFraction height = shape.group(2) == null ? BigFraction.ONE : exact(shape.group(2));
            if (width.signum() > 0 && height.signum() > 0) {
                return width.divide(height);
            }
        }
        throw unfit(text, "the width of a pixel over its height, such as 1, 1.33 or 2:1");
    }

    private static Integer bits(String text) {
        if (COUNT.matcher(text).matches()) {
            long bits = Long.parseLong(text);
            if (bits >= 1 && bits <= MOST_BITS) {
                return (int) bits;
            }
        }
        throw unfit(text, "bits a sample, from 1 to " + MOST_BITS);
    }

    private static Long count(String text) {
        if (COUNT.matcher(text).matches()) {
            return Long.parseLong(text);
        }
        throw unfit(text, "a number of frames");
    }

    private static BigFraction decimal(String text) {
        if (DECIMAL.matcher(text).matches()) {
            return exact(text);
        }
        throw unfit(text, "seconds, such as 12.5");
    }

    private static String tag(String text) {
        if (TAG.matcher(text).matches()) {
            return text;
        }
        throw unfit(text, "a tag as ffprobe prints it, such as bt709");
    }

    private static <T> T word(String text, Map<String, T> words, String allowed) {
        T value = words.get(text);
        if (value == null) {
            throw unfit(text, allowed);
        }
        return value;
    }

    private static BigFraction exact(String decimal) {
        BigDecimal number = new BigDecimal(decimal);
        return BigFraction.of(number.unscaledValue(), java.math.BigInteger.TEN.pow(number.scale()));
    }

    private static IllegalArgumentException unfit(String text, String allowed) {
        return new IllegalArgumentException("read " + Say.quote(text) + "; allowed: " + allowed);
    }
}
