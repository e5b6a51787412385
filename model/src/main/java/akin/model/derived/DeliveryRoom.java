package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.Fix;
import akin.model.finding.WhereFound;
import akin.model.gear.Mode;
import akin.model.gear.Output;
import akin.model.gear.Stabilisation;
import akin.model.optics.PictureShape;
import akin.model.quantity.PictureSize;
import akin.model.rig.Production;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * The recorded pixels that are left for the delivered picture.
 *
 * @param unitName name of the unit
 * @param frame the picture recorded
 * @param delivered pixels delivered
 */
public record DeliveryRoom(String unitName, Frame frame, PictureSize delivered) implements Derived {

    /** The pixels, or what is missing for them. */
    public static List<Object> derive(Unit unit, Production production) {
        PictureSize delivered =
                production.delivery() == null ? null : production.delivery().picture();
        List<Object> frame = Frame.derive(unit);
        Inputs inputs =
                Inputs.of(DeliveryRoom.class, unit).input("production.delivery.picture", WhereFound.PLAN, delivered);
        Frame known = frame.get(0) instanceof Frame f ? f : null;
        if (known == null) {
            frame.forEach(missing -> inputs.missing((akin.model.finding.Missing) missing));
        }
        return inputs.derive(() -> new DeliveryRoom(unit.name(), requireNonNull(known), requireNonNull(delivered)));
    }

    /** Recorded pixels left across, after cutting to the delivered shape, stabilising and enlarging by so many per cent. */
    public double widthLeft(double enlargedPercent) {
        return frame.pixelsLeft(delivered.ratio(), enlargedPercent);
    }

    /**
     * How far they fall short of the delivery, in per cent of it, along the side that falls shorter; 0 where they do not.
     *
     * @param enlargedPercent enlargement in per cent, 0 or above
     */
    public double percentShort(double enlargedPercent) {
        return percentShort(frame, enlargedPercent);
    }

    private double percentShort(Frame of, double enlargedPercent) {
        PictureShape.Extraction part = of.cutTo(delivered.ratio());
        double down = part.left().heightPixels() * of.shareUsed() / (1 + enlargedPercent / 100) / delivered.height();
        double across = of.pixelsLeft(delivered.ratio(), enlargedPercent) / delivered.width();
        return Math.max(0, 100 * (1 - Math.min(across, down)));
    }

    /** As it is recorded. */
    public double getShortBy() {
        return percentShort(0);
    }

    /** What is done to the recorded picture before it is delivered, in words. */
    public String steps(double enlargedPercent) {
        String words = String.format(Locale.ROOT, "cutting %s to %s", frame.picture(), ratio());
        if (frame.shareUsed() < 1) {
            words += String.format(Locale.ROOT, ", stabilising (%.0f %% of each side left)", frame.shareUsed() * 100);
        }
        if (enlargedPercent > 0) {
            words += String.format(Locale.ROOT, ", enlarging by %.0f %% to match the view", enlargedPercent);
        }
        return words;
    }

    /** False where the output that feeds the recorder sends one picture whatever the mode is. */
    static boolean sentAsItIs(Unit unit) {
        Output output = unit.recording().output();
        return output == null || output.picture() == null;
    }

    private String ratio() {
        return String.format(Locale.ROOT, "%.2f:1", delivered.aspect());
    }

    /**
     * A mode with enough pixels, the smallest of them; stabilisation off where that is enough; or scaling up. Keys:
     * larger-mode, hold-picture, scale-up.
     */
    public List<Fix> fixes(Unit unit, double enlargedPercent, double tolerance) {
        List<Fix> fixes = new ArrayList<>();
        if (frame.shareUsed() < 1
                && percentShort(new Frame(unitName, frame.picture(), frame.squeeze(), 1), enlargedPercent)
                        <= tolerance) {
            fixes.add(Fix.set("hold-picture", unit.path("stabilisation"), Stabilisation.NONE));
        }
        @Nullable Mode best = null;
        int least = Integer.MAX_VALUE;
        for (Mode mode : Alternatives.modes(unit)) {
            PictureSize picture = sentAsItIs(unit) ? mode.picture() : null;
            if (picture != null
                    && picture.width() < least
                    && percentShort(new Frame(unitName, picture, frame.squeeze(), frame.shareUsed()), enlargedPercent)
                            <= tolerance) {
                best = mode;
                least = picture.width();
            }
        }
        // Another mode may see another view, and so be enlarged by another amount: only offered where nothing is.
        if (best != null && enlargedPercent == 0) {
            fixes.add(Fix.set("larger-mode", unit.path("mode"), best.id())
                    .with("mode", null, best.id())
                    .with("picture", null, requireNonNull(best.picture())));
        }
        fixes.add(Fix.advise("scale-up"));
        return fixes;
    }
}
