package akin.model.derived;

import akin.model.rig.Rig;
import java.util.ArrayList;
import java.util.List;

/**
 * A clip of the hero and one of another unit that are of one take. Files that a body wrote one after the other count as one,
 * by the name of the first.
 *
 * @param hero name of the hero
 * @param other name of the other unit
 * @param ofHero the hero's clip
 * @param ofOther the other's
 */
public record TakePair(String hero, String other, ClipSpan ofHero, ClipSpan ofOther) {

    /** The pairs of a rig. */
    public static List<TakePair> among(Rig rig) {
        String hero = rig.match().hero();
        List<ClipSpan> spans = ClipSpan.takes(rig);
        List<TakePair> pairs = new ArrayList<>();
        for (ClipSpan a : spans) {
            for (ClipSpan b : spans) {
                if (a.unitName().equals(hero) && !b.unitName().equals(hero) && a.sameTake(b)) {
                    pairs.add(new TakePair(hero, b.unitName(), a, b));
                }
            }
        }
        return pairs;
    }

    /** Seconds by which one is longer. */
    public double apart() {
        return Math.abs(ofHero.seconds() - ofOther.seconds());
    }

    /** Name of the unit whose clip is shorter. */
    public String shorter() {
        return ofHero.seconds() < ofOther.seconds() ? hero : other;
    }
}
