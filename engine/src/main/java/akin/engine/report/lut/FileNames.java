package akin.engine.report.lut;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/** Names of files made from names of units, which may be any text: clear, harmless on every system, none twice. */
public final class FileNames {

    private static final int LONGEST = 40;

    /** Names that stand for devices on some systems, whatever ending they have. */
    private static final Set<String> DEVICES = Set.of("con", "prn", "aux", "nul");

    private final Set<String> given = new HashSet<>();

    /** The start of a file's name for a unit: letters, digits and single hyphens. */
    public String of(String unit) {
        String plain = unit.replaceAll("[^A-Za-z0-9]+", "-").replaceAll("^-|-$", "");
        String shortened = plain.substring(0, Math.min(LONGEST, plain.length()));
        String small = shortened.toLowerCase(Locale.ROOT);
        boolean device = DEVICES.contains(small) || small.matches("(com|lpt)[0-9]");
        String start = (shortened.isEmpty() || device ? "unit-" + shortened : shortened).replaceAll("-$", "");
        String name = start;
        // Some systems take small and capital letters for the same.
        for (int other = 2; !given.add(name.toLowerCase(Locale.ROOT)); other++) {
            name = start + "-" + other;
        }
        return name;
    }

    /**
     * The start of the names of a unit's look-up tables.
     *
     * @param name what {@link #of} gave the unit
     * @param from id of the encoding that goes in
     * @param to id of the encoding that comes out
     */
    public static String table(String name, String from, String to) {
        return name + "-" + from + "-to-" + to;
    }
}
