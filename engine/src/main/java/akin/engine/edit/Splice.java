package akin.engine.edit;

import akin.engine.read.Document;
import akin.engine.read.Node;
import akin.engine.read.Place;
import akin.model.finding.Edit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A piece of a document's text that edits replace.
 *
 * @param from index of its first code point in the text, from 0
 * @param to index behind its last code point; equal to {@code from} where something is only put in
 * @param text what stands there afterwards
 */
public record Splice(int from, int to, String text) {

    /**
     * What edits replace in a document, each piece by its place in the text as it is now, from start to end and without
     * overlap. Making all of them gives exactly what {@link Edits#apply} gives.
     *
     * @throws akin.engine.read.BadInput where {@link Edits#apply} throws it
     */
    public static List<Splice> of(Document document, List<Edit> edits) {
        int[] before = document.text().codePoints().toArray();
        int[] after = Edits.apply(document, edits).codePoints().toArray();
        List<Splice> each = new ArrayList<>();
        for (Edit edit : edits) {
            int[] alone = Edits.apply(document, List.of(edit)).codePoints().toArray();
            each.add(whole(document, edit, before, alone));
        }
        each.sort(Comparator.comparingInt(Splice::from).thenComparingInt(Splice::to));
        // Edits that lean on one another, such as two keys added to one mapping, become one piece.
        return apart(each) && java.util.Arrays.equals(applied(before, each), after)
                ? List.copyOf(each)
                : List.of(difference(before, after));
    }

    /** The text with splices made that do not overlap and go from start to end. */
    private static int[] applied(int[] text, List<Splice> splices) {
        StringBuilder out = new StringBuilder();
        int at = 0;
        for (Splice splice : splices) {
            out.append(new String(text, at, splice.from() - at)).append(splice.text());
            at = splice.to();
        }
        return out.append(new String(text, at, text.length - at)).codePoints().toArray();
    }

    private static boolean apart(List<Splice> sorted) {
        for (int i = 1; i < sorted.size(); i++) {
            if (sorted.get(i).from() < sorted.get(i - 1).to()
                    || sorted.get(i).from() == sorted.get(i - 1).from()) {
                return false;
            }
        }
        return true;
    }

    /** What one edit replaces: the whole value where it changes within one, so that people read it at a glance. */
    private static Splice whole(Document document, Edit edit, int[] before, int[] after) {
        Splice least = difference(before, after);
        Optional<Place> value = document.at(edit.path())
                .filter(Node.Scalar.class::isInstance)
                .map(Node::place)
                .filter(place -> edit.to() != null && place.from() <= least.from() && least.to() <= place.to());
        return value.map(place -> new Splice(
                        place.from(),
                        place.to(),
                        new String(after, place.from(), after.length - before.length + place.to() - place.from())))
                .orElse(least);
    }

    /** The shortest piece in which two texts differ. */
    private static Splice difference(int[] before, int[] after) {
        int start = 0;
        int most = Math.min(before.length, after.length);
        while (start < most && before[start] == after[start]) {
            start++;
        }
        int end = 0;
        while (end < most - start && before[before.length - 1 - end] == after[after.length - 1 - end]) {
            end++;
        }
        return new Splice(start, before.length - end, new String(after, start, after.length - end - start));
    }
}
