package akin.engine.assess;

import akin.engine.book.Examples;
import akin.engine.book.Shelf;
import akin.engine.read.Document;
import akin.engine.read.YamlReader;
import java.util.List;
import java.util.Random;

/** Rigs that somebody might plan: the matched pair with several settings of both units drawn anew, by seed. */
final class RandomRigs {

    private static final String NAME = "rig.yaml";
    private static final List<String> RATES = List.of("24000/1001", "24", "25", "30000/1001");
    private static final List<String> SHUTTERS = List.of("180°", "172.8°", "144°", "90°", "1/50", "1/60", "1/100");
    private static final List<String> SENSITIVITIES = List.of("200", "400", "800", "1250", "3200");
    private static final List<String> WHITES = List.of("3200 K", "4300 K", "4400 K", "5600 K");
    private static final List<String> TINTS = List.of("+0", "+3");
    private static final List<String> FILTERS = List.of("[]", "[ND 0.3]", "[ND 0.6]", "[ND 0.9]", "[ND 0.6, ND 0.6]");
    private static final List<String> STOPS = List.of("T2", "T2.8", "T4", "T5.6", "T11");
    private static final List<String> FOCALS = List.of("18 mm", "24 mm", "36 mm", "50 mm", "80 mm");
    private static final List<String> PROFILES = List.of("log", "log", "log", "look");
    private static final List<String> COUNTS = List.of("non-drop", "non-drop", "drop");
    private static final List<String> SOUNDS = List.of("48 kHz", "48 kHz", "44.1 kHz");

    private RandomRigs() {}

    /** The rig of a seed: the same each time. */
    static Document of(long seed) {
        Random random = new Random(seed);
        String changes = "units:\n  A: " + unit(random, "36 mm") + "\n  B: " + unit(random, one(FOCALS, random)) + "\n";
        return YamlReader.read(
                NAME,
                Examples.lay(YamlReader.read(NAME, changes), Shelf.matchedPair())
                        .text());
    }

    private static String unit(Random random, String focal) {
        return "{rate: " + one(RATES, random)
                + ", shutter: " + one(SHUTTERS, random)
                + ", iso: " + one(SENSITIVITIES, random)
                + ", white: " + one(WHITES, random)
                + ", tint: " + one(TINTS, random)
                + ", filters: " + one(FILTERS, random)
                + ", profile: " + one(PROFILES, random)
                + ", lens: {focal: " + focal + ", stop: " + one(STOPS, random) + "}"
                + ", timecode: {counting: " + one(COUNTS, random) + "}"
                + ", sound: {rate: " + one(SOUNDS, random) + "}}";
    }

    private static String one(List<String> words, Random random) {
        return words.get(random.nextInt(words.size()));
    }
}
