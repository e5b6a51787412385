package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.WhereFound;
import akin.model.footage.Clip;
import akin.model.rig.FittedLens;
import akin.model.rig.Unit;
import java.util.List;

/**
 * The shape of the pixels of a clip, by which an edit stretches it, beside the squeeze of the lens, by which it must be.
 *
 * @param unitName name of the unit
 * @param clip name of the clip
 * @param squeeze horizontal squeeze of the lens; 1 for none
 * @param found width over height of a pixel
 */
public record ClipPixels(String unitName, String clip, double squeeze, double found) implements ClipFact {

    /** The shape, or what is missing for it. */
    public static List<Object> derive(Unit unit, Clip clip) {
        FittedLens fitted = unit.lens();
        Inputs inputs = Inputs.of(ClipPixels.class, unit, clip).setting("lens", fitted);
        if (fitted != null) {
            inputs.input(
                    fitted.lens().path("squeeze"),
                    WhereFound.LENS_MARKINGS,
                    fitted.lens().squeeze());
        }
        return inputs.clip("pixel-shape", clip.pixelShape())
                .derive(() -> new ClipPixels(
                        unit.name(),
                        clip.name(),
                        requireNonNull(requireNonNull(fitted).lens().squeeze()),
                        requireNonNull(clip.pixelShape()).doubleValue()));
    }

    /** By how much a picture stretched as the clip says misses its shape, in per cent. Arithmetic. */
    public double percentOff() {
        return percent(squeeze);
    }

    /** By how much the pixels are from square, in per cent. */
    public double percentFromSquare() {
        return percent(1);
    }

    private double percent(double wanted) {
        return 100 * (Math.max(found, wanted) / Math.min(found, wanted) - 1);
    }
}
