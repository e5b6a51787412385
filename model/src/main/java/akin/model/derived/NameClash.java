package akin.model.derived;

import akin.model.footage.Clip;
import akin.model.rig.Rig;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Clips that an edit cannot tell apart: two units with one reel name, or several files of one name. Small and capital letters
 * are the same here, as on most cards.
 *
 * @param what what is the same, in words
 * @param word the name they share
 * @param units names of the units, in the order of the rig; one where a unit clashes with itself
 * @param clips names of the clips, in the order of the rig
 */
public record NameClash(String what, String word, List<String> units, List<String> clips) {

    /** The clashes of a rig. */
    public static List<NameClash> among(Rig rig) {
        Map<String, List<Clip>> files = new TreeMap<>();
        Map<String, List<Clip>> reels = new TreeMap<>();
        for (Clip clip : rig.footage()) {
            add(files, clip.file(), clip);
            String reel = clip.reel();
            if (reel != null) {
                add(reels, reel, clip);
            }
        }
        List<NameClash> clashes = new ArrayList<>();
        files.forEach((name, clips) -> {
            if (clips.size() > 1) {
                clashes.add(of("file name", clips.get(0).file(), clips));
            }
        });
        reels.forEach((name, clips) -> {
            NameClash clash = of("reel name", name, clips);
            if (clash.units.size() > 1) {
                clashes.add(clash);
            }
        });
        return clashes;
    }

    private static void add(Map<String, List<Clip>> by, String name, Clip clip) {
        by.computeIfAbsent(name.toUpperCase(Locale.ROOT), key -> new ArrayList<>())
                .add(clip);
    }

    private static NameClash of(String what, String word, List<Clip> clips) {
        Set<String> units = new LinkedHashSet<>();
        clips.forEach(clip -> units.add(clip.unitName()));
        return new NameClash(
                what, word, List.copyOf(units), clips.stream().map(Clip::name).toList());
    }

    /** The unit to look at: the last of them. */
    public String unitName() {
        return units.get(units.size() - 1);
    }

    /** The units, in words. */
    public String of() {
        return String.join(" and ", units);
    }

    /** The clips, in words; of many the first few. */
    public String list() {
        return clips.size() <= MOST_NAMED
                ? String.join(", ", clips)
                : String.join(", ", clips.subList(0, MOST_NAMED)) + " and " + (clips.size() - MOST_NAMED) + " more";
    }

    private static final int MOST_NAMED = 4;
}
