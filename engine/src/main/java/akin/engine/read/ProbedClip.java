package akin.engine.read;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Reads what ffprobe prints of one clip with {@code -print_format json -show_format -show_streams}. */
public final class ProbedClip {

    /** What a person saves a clip's metadata with; the file is to be named behind it. */
    public static final String COMMAND = "ffprobe -v error -print_format json -show_format -show_streams";

    private static final Pattern RATE = Pattern.compile("([1-9][0-9]{0,8})/([1-9][0-9]{0,8})");
    private static final Pattern DEEP = Pattern.compile(".*?(9|10|12|14|16)(?:le|be)");
    private static final Pattern EIGHT =
            Pattern.compile("yuvj?a?4[0-9]{2}p|gray|gbrp|nv(?:12|16|21|24)|uyvy422|yuyv422|(?:rgb|bgr)(?:24|0|a)");
    private static final int EXACT = 1000;

    private ProbedClip() {}

    /**
     * The clip that is described.
     *
     * @param name the file, for messages; the clip's own name too, where the text does not say it
     * @throws BadInput when this is not what ffprobe prints, or the file has no picture
     */
    public static ClipSheet read(String name, String text) {
        JsonNode root = tree(name, text);
        List<JsonNode> streams = elements(root.path("streams")).toList();
        if (!root.isObject() || !root.path("streams").isArray()) {
            throw new BadInput(
                    name, "this is not what ffprobe prints of a clip: it has no streams. Save it with: " + COMMAND);
        }
        JsonNode picture = streams.stream()
                .filter(stream -> kind(stream).equals("video"))
                .filter(stream ->
                        stream.path("disposition").path("attached_pic").asInt(0) == 0)
                .findFirst()
                .orElseThrow(() -> new BadInput(name, "this is no clip: it has no picture"));
        Map<String, String> columns = new LinkedHashMap<>();
        columns.put(
                ClipSheet.CLIP,
                word(root.path("format"), "filename")
                        .map(file -> file.replaceFirst("^file:", ""))
                        .orElse(name));
        picture(columns, picture);
        time(columns, root, streams, picture);
        sound(columns, streams);
        return ClipSheet.lenient(columns, (column, problem) -> new BadInput(name, problem));
    }

    private static JsonNode tree(String name, String text) {
        try {
            JsonNode root = new JsonMapper().readTree(text);
            return Objects.requireNonNull(root);
        } catch (JacksonException e) {
            TokenStreamLocation place = e.getLocation();
            throw new BadInput(
                    name,
                    place == null
                            ? Place.START
                            : new Place(Math.max(1, place.getLineNr()), Math.max(1, place.getColumnNr()), 0, 0),
                    "this is not JSON from here on; save what ffprobe prints with: " + COMMAND);
        }
    }

    private static void picture(Map<String, String> columns, JsonNode stream) {
        word(stream, "width")
                .ifPresent(width ->
                        word(stream, "height").ifPresent(height -> columns.put("picture", width + "x" + height)));
        word(stream, "sample_aspect_ratio").ifPresent(shape -> columns.put("pixel-shape", shape));
        word(stream, "pix_fmt").or(() -> Optional.of("")).ifPresent(format -> {
            bits(stream, format).ifPresent(bits -> columns.put("bits", bits));
            if (format.startsWith("yuvj")) {
                columns.put("range", "full");
            }
        });
        word(stream, "color_range").ifPresent(range -> columns.put("range", range));
        word(stream, "color_primaries").ifPresent(tag -> columns.put("primaries", tag));
        word(stream, "color_transfer").ifPresent(tag -> columns.put("transfer", tag));
        word(stream, "color_space").ifPresent(tag -> columns.put("matrix", tag));
        word(stream, "field_order").ifPresent(order -> columns.put("scan", order));
    }

    /** Bits a sample: what the stream says, else what its pixel format is named after. */
    private static Optional<String> bits(JsonNode stream, String format) {
        Optional<String> said = word(stream, "bits_per_raw_sample").filter(bits -> !bits.equals("0"));
        if (said.isPresent()) {
            return said;
        }
        Matcher deep = DEEP.matcher(format);
        if (deep.matches()) {
            return Optional.of(deep.group(1));
        }
        return EIGHT.matcher(format).matches() ? Optional.of("8") : Optional.empty();
    }

    private static void time(Map<String, String> columns, JsonNode root, List<JsonNode> streams, JsonNode picture) {
        Optional<String> average = rate(picture, "avg_frame_rate");
        Optional<String> stamped = rate(picture, "r_frame_rate");
        // Some demuxers stamp an interlaced picture for its fields.
        boolean fields = !columns.getOrDefault("scan", "").equals("progressive")
                && average.isPresent()
                && stamped.isPresent()
                && perSecond(stamped.get()) == 2 * perSecond(average.get());
        (fields ? average : stamped).ifPresent(rate -> columns.put("rate", rate));
        average.ifPresent(rate -> columns.put("average-rate", rate));
        Optional<String> seconds = word(picture, "duration");
        seconds.ifPresent(duration -> columns.put("seconds", duration));
        word(picture, "nb_frames")
                .or(() -> counted(seconds, average))
                .ifPresent(frames -> columns.put("frames", frames));
        Stream.concat(Stream.of(picture), Stream.concat(streams.stream(), Stream.of(root.path("format"))))
                .flatMap(holder -> word(holder.path("tags"), "timecode").stream())
                .findFirst()
                .ifPresent(timecode -> columns.put("timecode", timecode));
        streams.stream()
                .filter(stream -> word(stream, "codec_tag_string").equals(Optional.of("tmcd")))
                .flatMap(stream -> rate(stream, "avg_frame_rate").stream())
                .findFirst()
                .ifPresent(rate -> columns.put("timecode-rate", rate));
        Stream.concat(streams.stream(), Stream.of(root.path("format")))
                .flatMap(holder -> word(holder.path("tags"), "reel_name").stream())
                .findFirst()
                .ifPresent(reel -> columns.put("reel", reel));
    }

    /** Frames from duration and rate, where the file does not count them and the product is a whole number. */
    private static Optional<String> counted(Optional<String> seconds, Optional<String> rate) {
        if (seconds.isEmpty() || rate.isEmpty() || !seconds.get().matches("[0-9]{1,9}(\\.[0-9]{1,9})?")) {
            return Optional.empty();
        }
        double frames = Double.parseDouble(seconds.get()) * perSecond(rate.get());
        return Math.abs(frames - Math.rint(frames)) * EXACT < 1
                ? Optional.of(String.valueOf((long) Math.rint(frames)))
                : Optional.empty();
    }

    private static void sound(Map<String, String> columns, List<JsonNode> streams) {
        Optional<JsonNode> sound =
                streams.stream().filter(stream -> kind(stream).equals("audio")).findFirst();
        if (sound.isEmpty()) {
            columns.put("audio-rate", ClipSheet.SILENT);
            return;
        }
        word(sound.get(), "sample_rate").ifPresent(rate -> columns.put("audio-rate", rate + " Hz"));
        word(sound.get(), "duration").ifPresent(seconds -> columns.put("audio-seconds", seconds));
    }

    private static String kind(JsonNode stream) {
        return word(stream, "codec_type").orElse("");
    }

    private static Optional<String> rate(JsonNode stream, String key) {
        return word(stream, key).filter(rate -> RATE.matcher(rate).matches());
    }

    private static double perSecond(String rate) {
        Matcher parts = RATE.matcher(rate);
        if (!parts.matches()) {
            throw new IllegalStateException(rate);
        }
        return Double.parseDouble(parts.group(1)) / Double.parseDouble(parts.group(2));
    }

    /** A text or number; empty when there is none. */
    private static Optional<String> word(JsonNode node, String key) {
        @Nullable JsonNode value = node.get(key);
        return value == null || !value.isValueNode() || value.isNull()
                ? Optional.empty()
                : Optional.of(value.asString()).filter(text -> !text.isBlank());
    }

    private static Stream<JsonNode> elements(JsonNode array) {
        return StreamSupport.stream(array.spliterator(), false);
    }
}
