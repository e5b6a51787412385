package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.Fix;
import akin.model.finding.WhereFound;
import akin.model.gear.Codec;
import akin.model.quantity.PictureSize;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How strongly a unit's recording is compressed: bits of the picture before compression for each bit that is written.
 *
 * <p>Arithmetic: bits a sample x samples a pixel x pixels x frames a second / data rate. Samples a pixel are 1 of raw
 * values, and of an encoded picture 1 for brightness and the chroma share for each of two colour signals: 3 for 4:4:4, 2
 * for 4:2:2, 1.5 for 4:2:0. Check value: 10 bits of 4:2:2 at 1920x1080 and 30000/1001 into 220 Mbit/s are 5.65 to 1.
 *
 * @param unitName name of the unit
 * @param kind raw values or an encoded picture
 * @param ratio bits before for each bit after
 */
public record Compression(String unitName, Codec.Kind kind, double ratio) implements Derived {

    /** The ratio, or what is missing for it. */
    public static List<Object> derive(Unit unit) {
        Codec codec = unit.recording().codec();
        Inputs inputs = WrittenData.flow(Inputs.of(Compression.class, unit), unit);
        if (codec != null) {
            inputs.input(GradingRoom.path(unit, codec, "kind"), WhereFound.SPEC_SHEET, codec.kind())
                    .input(GradingRoom.path(unit, codec, "bits"), WhereFound.SPEC_SHEET, codec.bits());
            if (codec.kind() == Codec.Kind.ENCODED) {
                inputs.input(GradingRoom.path(unit, codec, "chroma"), WhereFound.SPEC_SHEET, ChromaDetail.share(codec));
            }
        }
        return inputs.derive(() -> new Compression(
                unit.name(), requireNonNull(requireNonNull(codec).kind()), requireNonNull(ratio(codec, unit))));
    }

    /** The ratio of a codec in the mode and at the rate of a unit; null when something for it is not known. */
    static @Nullable Double ratio(Codec codec, Unit unit) {
        PictureSize picture = unit.recordedPicture();
        Double share = codec.kind() == Codec.Kind.RAW ? (Double) 0.0 : ChromaDetail.share(codec);
        if (picture == null || share == null || codec.bits() == null || codec.data() == null) {
            return null;
        }
        Double written = codec.data().bitsPerSecond(picture, unit.rate());
        if (written == null) {
            return null;
        }
        double pixels =
                (double) picture.width() * picture.height() * unit.rate().perSecond();
        return codec.bits() * (1 + 2 * share) * pixels / written;
    }

    /** How much more the one is compressed than the other, in per cent of the lesser. */
    public double apart(Compression other) {
        return apart(ratio, other.ratio);
    }

    private static double apart(double a, double b) {
        return 100 * (Math.max(a, b) / Math.min(a, b) - 1);
    }

    /** Name of the unit that compresses more of the two. */
    public String strongerOf(Compression other) {
        return ratio > other.ratio ? unitName : other.unitName;
    }

    /** The one that compresses less of the two. */
    public Compression weakerOf(Compression other) {
        return ratio > other.ratio ? other : this;
    }

    /**
     * The codec of the same device and kind that is nearest to a ratio and within a limit of it; or a test. Keys: nearer-step,
     * texture.
     *
     * @param wanted what the other unit has
     * @param percent how far apart they may be, in per cent of the lesser
     */
    public static List<Fix> fixes(Unit unit, Compression wanted, double percent) {
        List<Fix> fixes = new ArrayList<>();
        Optional<Codec> nearest = ChromaDetail.codecs(unit).values().stream()
                .filter(codec -> codec.kind() == wanted.kind && away(codec, unit, wanted) <= percent)
                .min(Comparator.comparingDouble((Codec codec) -> away(codec, unit, wanted))
                        .thenComparing(Codec::id));
        nearest.ifPresent(codec -> fixes.add(Fix.set("nearer-step", unit.path(ChromaDetail.key(unit)), codec.id())
                .with("codec", null, codec.id())
                .with("ratio", null, Objects.requireNonNull(ratio(codec, unit)), "")));
        fixes.add(Fix.advise("texture"));
        return fixes;
    }

    private static double away(Codec codec, Unit unit, Compression wanted) {
        Double own = ratio(codec, unit);
        return own == null ? Double.POSITIVE_INFINITY : apart(own, wanted.ratio);
    }
}
