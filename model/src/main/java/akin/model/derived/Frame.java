package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.WhereFound;
import akin.model.gear.Stabilisation;
import akin.model.optics.PictureShape;
import akin.model.quantity.PictureSize;
import akin.model.rig.FittedLens;
import akin.model.rig.Unit;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The picture a unit records, as it is looked at.
 *
 * @param unitName name of the unit
 * @param picture pixels recorded
 * @param squeeze horizontal squeeze of the lens; 1 for none
 * @param shareUsed share of the width and height that electronic stabilisation leaves; 1 when it is off
 */
public record Frame(String unitName, PictureSize picture, double squeeze, double shareUsed) implements Derived {

    /** The picture, or what is missing for it. */
    public static List<Object> derive(Unit unit) {
        FittedLens fitted = unit.lens();
        PictureSize picture = unit.recordedPicture();
        Inputs inputs = Inputs.of(Frame.class, unit)
                .mode("picture", WhereFound.SPEC_SHEET, picture)
                .setting("lens", fitted);
        if (fitted != null) {
            inputs.input(
                    fitted.lens().path("squeeze"),
                    WhereFound.LENS_MARKINGS,
                    fitted.lens().squeeze());
        }
        if (unit.stabilisation() == Stabilisation.ELECTRONIC) {
            inputs.body("steady-crop", WhereFound.TEST, unit.body().steadyCrop());
        }
        return inputs.derive(() -> new Frame(
                unit.name(),
                requireNonNull(picture),
                requireNonNull(requireNonNull(fitted).lens().squeeze()),
                Steadiness.shareUsed(unit)));
    }

    /** The picture in square pixels, stretched to the width it is looked at. */
    public PictureShape shape() {
        return new PictureShape((int) Math.round(picture.width() * squeeze), picture.height());
    }

    /** Width over height as it is looked at. */
    public double ratio() {
        return shape().ratio().doubleValue();
    }

    /** What is left of it when cut to a shape. */
    public PictureShape.Extraction cutTo(BigFraction ratio) {
        return shape().extract(ratio);
    }

    /** What is lost of its width or height when cut to a shape, in per cent. */
    public double percentLost(BigFraction ratio) {
        PictureShape.Extraction part = cutTo(ratio);
        return Math.max(part.widthPercentLost(), part.heightPercentLost());
    }

    /** The part of the recorded pixels to compose in for a shape, such as {@code 3840x2160}. */
    public String guide(BigFraction ratio) {
        PictureShape left = cutTo(ratio).left();
        return Math.round(left.widthPixels() / squeeze) + "x" + left.heightPixels();
    }

    /**
     * Recorded pixels across that are left when cut to a shape and enlarged.
     *
     * @param ratio width over height of the shape
     * @param enlargedPercent enlargement in per cent, 0 or above
     */
    public double pixelsLeft(BigFraction ratio, double enlargedPercent) {
        return cutTo(ratio).left().widthPixels() / squeeze * shareUsed / (1 + enlargedPercent / 100);
    }
}
