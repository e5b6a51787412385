package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.Fix;
import akin.model.finding.WhereFound;
import akin.model.gear.Codec;
import akin.model.gear.Output;
import akin.model.gear.Recorder;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * How finely a unit records colour beside brightness. Only of a developed picture: raw values have no chroma.
 *
 * @param unitName name of the unit
 * @param sampling as written, such as {@code 4:2:2}
 * @param share colour samples for each sample of brightness: 1 for 4:4:4, 0.5 for 4:2:2, 0.25 for 4:2:0 and 4:1:1
 */
public record ChromaDetail(String unitName, String sampling, double share) implements Derived {

    private static final Pattern SAMPLING = Pattern.compile("4:([0124]):([0124])");

    /** Share of 4:2:2, under which colour edges show when a picture is graded or keyed. Common practice, no source. */
    private static final double ENOUGH = 0.5;

    /** The chroma sampling, or what is missing for it. */
    public static List<Object> derive(Unit unit) {
        Codec codec = unit.recording().codec();
        Inputs inputs = Inputs.of(ChromaDetail.class, unit).setting(key(unit), codec);
        if (codec == null) {
            return inputs.derive(() -> {
                throw new IllegalStateException("no codec of " + unit.name());
            });
        }
        if (codec.kind() == Codec.Kind.RAW) {
            return List.of();
        }
        inputs.input(GradingRoom.path(unit, codec, "chroma"), WhereFound.SPEC_SHEET, share(codec));
        Output output = unit.recording().output();
        if (output != null && output.kind() != Codec.Kind.RAW) {
            inputs.body("outputs." + output.id() + ".chroma", WhereFound.SPEC_SHEET, share(output.chroma()));
        }
        return inputs.derive(() -> {
            String sampling = recorded(unit, requireNonNull(codec.chroma()));
            return new ChromaDetail(unit.name(), sampling, requireNonNull(share(sampling)));
        });
    }

    /** How colour is sampled in the file: no finer than the output sends it to the recorder. */
    private static String recorded(Unit unit, String written) {
        Output output = unit.recording().output();
        Double sent = output == null || output.kind() == Codec.Kind.RAW ? null : share(output.chroma());
        Double own = share(written);
        return sent == null || own == null || sent >= own
                ? written
                : requireNonNull(requireNonNull(output).chroma());
    }

    /** The key under a unit that says what it writes. */
    public static String key(Unit unit) {
        return unit.recording().external() ? "recorder.codec" : "codec";
    }

    /**
     * Colour samples for each sample of brightness, from J:a:b: (a + b) / 8 of each of the two colour signals. Null when the
     * codec does not say.
     */
    static @Nullable Double share(Codec codec) {
        return share(codec.chroma());
    }

    private static @Nullable Double share(@Nullable String sampling) {
        if (sampling == null) {
            return null;
        }
        Matcher parts = SAMPLING.matcher(sampling);
        return parts.matches()
                ? (Double) ((Integer.parseInt(parts.group(1)) + Integer.parseInt(parts.group(2))) / 8.0)
                : null;
    }

    /** True when the colour is too coarse to be graded or keyed like the other's. */
    public boolean coarse() {
        return share < ENOUGH;
    }

    /** Name of the unit with the less detail of the two. */
    public String coarserOf(ChromaDetail other) {
        return share < other.share ? unitName : other.unitName;
    }

    /** The one with more detail of the two. */
    public ChromaDetail finerOf(ChromaDetail other) {
        return share < other.share ? other : this;
    }

    /**
     * Another codec of the same device with this detail, one with as many bits as now before one with fewer; or care in post.
     * Keys: finer, care.
     */
    public static List<Fix> fixes(Unit unit, ChromaDetail wanted) {
        List<Fix> fixes = new ArrayList<>();
        Codec now = unit.recording().codec();
        int bits = now == null || now.bits() == null ? 0 : now.bits();
        codecs(unit).values().stream()
                .filter(codec -> codec.kind() == Codec.Kind.ENCODED && codec.chroma() != null)
                .filter(codec -> {
                    Double share = share(recorded(unit, requireNonNull(codec.chroma())));
                    return share != null && share == wanted.share;
                })
                .min(Comparator.<Codec, Boolean>comparing(codec -> codec.bits() == null || codec.bits() < bits)
                        .thenComparing(Codec::id))
                .ifPresent(codec -> fixes.add(
                        Fix.set("finer", unit.path(key(unit)), codec.id()).with("codec", null, codec.id())));
        fixes.add(Fix.advise("care"));
        return fixes;
    }

    /** The codecs that the device which records a unit offers in its mode, by id; raw ones only where raw values reach it. */
    static Map<String, Codec> codecs(Unit unit) {
        Recorder recorder = unit.recording().recorder();
        List<String> offered = unit.mode().codecs();
        Map<String, Codec> codecs = new TreeMap<>(recorder == null ? unit.body().codecs() : recorder.codecs());
        if (recorder == null && offered != null) {
            codecs.keySet().retainAll(offered);
        }
        Output output = unit.recording().output();
        if (output != null && output.kind() == Codec.Kind.ENCODED) {
            codecs.values().removeIf(codec -> codec.kind() == Codec.Kind.RAW);
        }
        return codecs;
    }

    /** A codec of the same device of this kind and at least so many bits; then something for people. */
    public static List<Fix> codecWith(Unit unit, Codec.Kind kind, int bits, String key, String otherwise) {
        List<Fix> fixes = new ArrayList<>();
        codecs(unit).values().stream()
                .filter(codec ->
                        codec.kind() == kind && codec.bits() != null && GradingRoom.bits(unit, codec.bits()) >= bits)
                .findFirst()
                .ifPresent(codec ->
                        fixes.add(Fix.set(key, unit.path(key(unit)), codec.id()).with("codec", null, codec.id())));
        fixes.add(Fix.advise(otherwise));
        return fixes;
    }
}
