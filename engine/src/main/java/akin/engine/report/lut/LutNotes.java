package akin.engine.report.lut;

import akin.engine.report.Wrap;
import akin.model.colour.Adaptation;
import akin.model.gear.SignalRange;
import akin.model.look.LookTable;
import akin.model.look.Viewing;
import akin.model.look.ViewingLook;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What a table takes, gives and leaves out, in sentences that go into its files and into the report alike. */
public final class LutNotes {

    private LutNotes() {}

    /** What goes in, in a few words. */
    public static String input(LookTable table) {
        return table.encoding().name() + " in " + table.gamut().name() + ", " + range(table.takes());
    }

    /** What comes out, in a few words. */
    public static String output(LookTable table) {
        return output(table.look().viewing()) + ", " + range(table.gives());
    }

    /** The display, in a few words. */
    public static String output(Viewing viewing) {
        Double white = viewing.encoding().referenceWhite();
        return viewing.encoding().name() + " in " + viewing.gamut().name()
                + (white == null ? "" : String.format(Locale.ROOT, ", peak %.0f cd/m2", viewing.peak()));
    }

    private static String range(SignalRange range) {
        return range == SignalRange.FULL
                ? "0 to 1 from the lowest to the highest code"
                : "0 to 1 from video black to video white";
    }

    /** How the look is made: what is chosen in it, and where from. */
    public static List<String> look(ViewingLook look) {
        List<String> notes = new ArrayList<>();
        notes.add(
                "Look: " + ViewingLook.NAME + ", the same for every unit. Middle grey is shown where BT.709 and BT.1886"
                        + " show it, at 40.9 % of the signal; over it light is eased into white, under it into black, by"
                        + " v = y^n / (y^n + k) on each channel of a working gamut that holds those of cameras.");
        notes.add(String.format(
                Locale.ROOT,
                "Gamut compression: none by itself. Saturation is taken to %.0f %% at the display, and signals are bent"
                        + " smoothly into 0 to 1 within 2 %% of either end, so nothing is cut off hard.",
                100 * ViewingLook.SATURATION));
        return notes;
    }

    /** How colours are carried between whites. */
    public static String adaptation(LookTable table) {
        boolean in = ViewingLook.adapts(table.gamut());
        boolean out = ViewingLook.adapts(table.look().viewing().gamut());
        if (!in && !out) {
            return "Adaptation: none, the white is D65 on both sides.";
        }
        String what = in && out
                ? "from the white of " + table.gamut().name() + " and to that of "
                        + table.look().viewing().gamut().name()
                : in
                        ? "from the white of " + table.gamut().name() + " to D65"
                        : "from D65 to the white of "
                                + table.look().viewing().gamut().name();
        String name = table.look().adaptation() == Adaptation.CAT02 ? "CAT02" : "Bradford";
        return "Adaptation: " + name + ", " + what + ".";
    }

    /** What stands at the head of a table's file. */
    static List<String> head(String unit, LookTable table) {
        List<String> notes = new ArrayList<>();
        notes.add("Akin: look-up table for unit " + unit);
        notes.add("Takes " + input(table) + ".");
        notes.add("Gives " + output(table) + ".");
        notes.add(adaptation(table));
        notes.addAll(look(table.look()));
        return notes.stream().map(LutNotes::plain).toList();
    }

    /** Characters that every reader of such files takes: names of a rig file must not end a comment or a title. */
    static String plain(String text) {
        StringBuilder out = new StringBuilder();
        Wrap.clean(text).codePoints().forEach(c -> out.append(c >= ' ' && c < 0x7F && c != '"' ? (char) c : '?'));
        return out.toString();
    }
}
