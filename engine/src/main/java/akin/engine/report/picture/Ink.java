package akin.engine.report.picture;

import akin.model.rig.Rig;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * How a unit looks in every picture: a colour, a dash and a mark of its own, so that it can be told without colour.
 *
 * @param index its place among the units, the hero being 0
 * @param name name of the unit
 */
public record Ink(int index, String name) {

    /** Sets of colour, dash and mark that the style sheet knows; a larger rig uses them again. */
    private static final int SETS = 6;

    private static final int LONGEST_TAG = 7;
    private static final double RADIUS = 4.6;

    static List<Ink> of(Rig rig) {
        List<Ink> inks = new ArrayList<>();
        rig.units().forEach(unit -> inks.add(new Ink(inks.size(), unit.name())));
        return List.copyOf(inks);
    }

    /** Name of the style rule for its colour and dash. */
    public String look() {
        return "u" + index % SETS;
    }

    /** The name as far as there is room for it in a picture. */
    public String tag() {
        return name.length() <= LONGEST_TAG ? name : name.substring(0, LONGEST_TAG - 1) + "…";
    }

    /** The path of its mark around a point. */
    public String mark(double x, double y) {
        return mark(x, y, 1);
    }

    /** The path of its mark around a point, so many times as large. */
    String mark(double x, double y, double size) {
        double r = RADIUS * size;
        return switch (index % SETS) {
            case 0 -> path("M%s %s a%s %s 0 1 0 %s 0 a%s %s 0 1 0 -%s 0z", x - r, y, r, r, 2 * r, r, r, 2 * r);
            case 1 -> path("M%s %sh%sv%sh-%sz", x - r, y - r, 2 * r, 2 * r, 2 * r);
            case 2 -> path("M%s %sL%s %sL%s %sz", x, y - 1.25 * r, x + 1.2 * r, y + r, x - 1.2 * r, y + r);
            case 3 -> path("M%s %sL%s %sL%s %sL%s %sz", x, y - 1.4 * r, x + 1.4 * r, y, x, y + 1.4 * r, x - 1.4 * r, y);
            case 4 -> path("M%s %sL%s %sL%s %sz", x, y + 1.25 * r, x + 1.2 * r, y - r, x - 1.2 * r, y - r);
            default ->
                path("M%s %sh%sv%sh-%szm0 %sh%sv%sh-%sz", x - r, y - r, 2 * r, 3.5, 2 * r, r + 1, 2 * r, 3.5, 2 * r);
        };
    }

    private static String path(String template, double... numbers) {
        Object[] written = new Object[numbers.length];
        for (int i = 0; i < numbers.length; i++) {
            written[i] = Canvas.px(numbers[i]);
        }
        return String.format(Locale.ROOT, template, written);
    }
}
