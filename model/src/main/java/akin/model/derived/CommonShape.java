package akin.model.derived;

import akin.model.finding.Fix;
import akin.model.gear.Mode;
import akin.model.optics.PictureShape;
import akin.model.quantity.PictureSize;
import akin.model.rig.Delivery;
import akin.model.rig.Production;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What the pictures of a pairing have in common.
 *
 * @param matched the unit that is matched
 * @param own its picture
 * @param hero the hero's picture
 * @param ratio width over height of the common extraction: the delivery's, or else that of the narrower picture
 */
public record CommonShape(Unit matched, Frame own, Frame hero, BigFraction ratio) {

    /** The extraction that two pictures have in common. */
    public static CommonShape of(Unit matched, Frame own, Frame hero, Production production) {
        Delivery delivery = production.delivery();
        PictureSize delivered = delivery == null ? null : delivery.picture();
        return new CommonShape(
                matched,
                own,
                hero,
                delivered == null
                        ? PictureShape.common(hero.shape(), own.shape()).ratio()
                        : delivered.ratio());
    }

    /** How far the shapes are apart: what the wider picture loses of its width to the narrower, in per cent. */
    public double getApart() {
        return apart(own.shape());
    }

    private double apart(PictureShape shape) {
        PictureShape.Common common = PictureShape.common(hero.shape(), shape);
        return Math.max(common.ofA().widthPercentLost(), common.ofB().widthPercentLost());
    }

    /** A ratio as one says it. */
    public static String said(double ratio) {
        return String.format(Locale.ROOT, "%.2f:1", ratio);
    }

    /** A mode of the unit that has the hero's shape; or guides. Keys: like-hero, set-guides. */
    public List<Fix> fixes(double tolerance) {
        List<Fix> fixes = new ArrayList<>();
        for (Mode mode : Alternatives.modes(matched)) {
            PictureSize picture = DeliveryRoom.sentAsItIs(matched) ? mode.picture() : null;
            if (picture != null && apart(new Frame(matched.name(), picture, own.squeeze(), 1).shape()) <= tolerance) {
                fixes.add(Fix.set("like-hero", matched.path("mode"), mode.id())
                        .with("mode", null, mode.id())
                        .with("picture", null, picture));
                break;
            }
        }
        fixes.add(Fix.advise("set-guides"));
        return fixes;
    }
}
