package akin.model.quantity;

import java.util.regex.MatchResult;
import org.jspecify.annotations.Nullable;

/** Stops as people count them: "2", "0.5", "1/3", "1 1/3". */
final class StopCount {
    /** An unsigned count in four groups: whole part and fraction (two groups), or a number. */
    static final String COUNT =
            "(?:(?:([0-9]{1,3})" + Notation.SPACE + ")?([0-9]{1,4})/([0-9]{1,4})|(" + Notation.NUMBER + "))";

    private StopCount() {}

    /** The count whose four groups begin at the given one; a fraction of nothing gives a value no range accepts. */
    static double of(MatchResult m, int group) {
        @Nullable String number = m.group(group + 3);
        if (number != null) {
            return Double.parseDouble(number);
        }
        @Nullable String whole = m.group(group);
        int denominator = Integer.parseInt(m.group(group + 2));
        int numerator = Integer.parseInt(m.group(group + 1));
        return (double) ((whole == null ? 0 : Integer.parseInt(whole)) * denominator + numerator) / denominator;
    }

    /** Writes a count with its unit, in thirds and sixths where that is what it is. */
    static String write(double stops) {
        String unit = Math.abs(stops) <= 1 ? " stop" : " stops";
        return (stops < 0 ? "-" : "") + count(Math.abs(stops)) + unit;
    }

    private static String count(double stops) {
        long sixths = Math.round(stops * 6);
        if (sixths % 3 == 0 || sixths / 6.0 != stops || stops >= 999) {
            return Notation.plain(stops);
        }
        long whole = sixths / 6;
        long rest = sixths % 6;
        String fraction = rest % 2 == 0 ? rest / 2 + "/3" : rest + "/6";
        return whole == 0 ? fraction : whole + " " + fraction;
    }
}
