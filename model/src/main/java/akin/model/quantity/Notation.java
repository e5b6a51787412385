package akin.model.quantity;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** How one quantity is written: its shape, its range in words, and what to say when a text does not fit. */
final class Notation {
    /** A plain decimal number without sign. */
    static final String NUMBER = "[0-9]+(?:\\.[0-9]+)?";
    /** A plain decimal number with or without a sign. */
    static final String SIGNED = "[+-]?[0-9]+(?:\\.[0-9]+)?";
    /** What may stand between a number and its unit: nothing, spaces, no-break spaces. */
    static final String GAP = "[ \\u00A0\\u202F]*";
    /** As {@link #GAP}, but something must stand there. */
    static final String SPACE = "[ \\u00A0\\u202F]+";

    /** Longer texts are refused unread: the smallest positive double written out in full stays below this. */
    private static final int LONGEST = 400;

    private static final Pattern COMMA = Pattern.compile("[0-9],[0-9]");
    private static final Pattern SEPARATED = Pattern.compile(".*[0-9][,'_’ \\u00A0\\u202F][0-9]{3}(?![0-9]).*");
    private static final Pattern EXPONENT = Pattern.compile(".*[0-9.][eE][+-]?[0-9].*");
    private static final Pattern HEXADECIMAL = Pattern.compile(".*\\b0[xX][0-9a-fA-F].*");
    private static final Pattern NOT_A_NUMBER = Pattern.compile("(?i).*(?:\\bnan\\b|\\binf(?:inity)?\\b|∞).*");
    private static final Pattern NEGATIVE = Pattern.compile("[-−].*");
    private static final Pattern BARE_POINT = Pattern.compile("(?:.*[^0-9])?\\.[0-9].*|.*[0-9]\\.(?:[^0-9].*)?");

    private record Hint(Pattern shape, String words) {}

    private final String quantity;
    private final String allowed;
    private final Pattern shape;
    private final String range;
    private final List<Hint> hints;

    /** @param range completes the sentence "it must be ..." */
    Notation(String quantity, String allowed, String pattern, String range) {
        this(quantity, allowed, Pattern.compile(pattern), range, List.of());
    }

    private Notation(String quantity, String allowed, Pattern shape, String range, List<Hint> hints) {
        this.quantity = quantity;
        this.allowed = allowed;
        this.shape = shape;
        this.range = range;
        this.hints = hints;
    }

    /**
     * Adds something to say to a text that is wholly of the given shape.
     *
     * @param words may use the shape's groups as $1, $2
     */
    Notation hint(String misshape, String words) {
        List<Hint> more = new ArrayList<>(hints);
        more.add(new Hint(Pattern.compile("^(?:" + misshape + ")\\z"), words));
        return new Notation(quantity, allowed, shape, range, List.copyOf(more));
    }

    /** As {@link #hint}, for a number that stands alone; the number is $1. */
    Notation bare(String words) {
        return hint("(" + SIGNED + ")", words);
    }

    /** Reads a text of this shape; an error raised while making the value is told with the text that was read. */
    <T> T read(String text, Function<MatchResult, T> maker) {
        if (text.length() > LONGEST) {
            throw new QuantityException(quantity, text, allowed, "it must be at most " + LONGEST + " characters long");
        }
        Matcher matcher = shape.matcher(text);
        if (!matcher.matches()) {
            throw new QuantityException(quantity, text, allowed, hintFor(text, likely -> reads(likely, maker)));
        }
        try {
            return maker.apply(matcher.toMatchResult());
        } catch (QuantityException e) {
            throw e.reading(text);
        }
    }

    /** Throws unless the value is in range. */
    void check(boolean inRange, double value) {
        if (!inRange) {
            throw wrong(plain(value), outOfRange());
        }
    }

    /** An error of this quantity with a hint of its own. */
    QuantityException wrong(String read, String hint) {
        return new QuantityException(quantity, read, allowed, hint);
    }

    String outOfRange() {
        return "it must be " + range;
    }

    /** number x factor, rounded once. */
    static double scaled(String number, String factor) {
        return new BigDecimal(number).multiply(new BigDecimal(factor)).doubleValue();
    }

    /** The shortest plain decimal that reads back as the same double, after moving the point exactly. */
    static String plain(double value, int pointLeft) {
        return plain(new BigDecimal(Double.toString(value)).movePointLeft(pointLeft));
    }

    static String plain(double value) {
        return Double.isFinite(value) ? plain(value, 0) : Double.toString(value);
    }

    static String plain(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }

    private <T> boolean reads(String text, Function<MatchResult, T> maker) {
        Matcher matcher = shape.matcher(text);
        if (!matcher.matches()) {
            return false;
        }
        try {
            return maker.apply(matcher.toMatchResult()) != null;
        } catch (QuantityException e) {
            return false;
        }
    }

    private @Nullable String hintFor(String text, Predicate<String> reads) {
        if (text.isBlank()) {
            return "nothing is written here";
        }
        String tidy = text.strip();
        for (Hint hint : hints) {
            Matcher matcher = hint.shape.matcher(tidy);
            if (matcher.matches()) {
                return matcher.replaceFirst(hint.words);
            }
        }
        if (shape.matcher(tidy).matches()) {
            return "leave out the space before and after it";
        }
        if (text.chars().anyMatch(c -> c > '9' && Character.isDigit(c))) {
            return "write the digits 0 to 9";
        }
        if (NOT_A_NUMBER.matcher(text).matches() || HEXADECIMAL.matcher(text).matches()) {
            return "write a plain decimal number";
        }
        if (EXPONENT.matcher(text).matches()) {
            return "write the number out in full, without an exponent";
        }
        if (COMMA.matcher(text).find()) {
            return commaHint(tidy, reads);
        }
        if (SEPARATED.matcher(text).matches()) {
            return "write the number without thousands separators";
        }
        if (NEGATIVE.matcher(tidy).matches()) {
            String positive = tidy.substring(1).strip();
            if (shape.matcher("-" + positive).matches()) {
                return "write -" + positive;
            }
            return outOfRange();
        }
        if (BARE_POINT.matcher(text).matches()) {
            return "write a digit before and after the decimal point";
        }
        if (text.indexOf('º') >= 0 || text.indexOf('˚') >= 0) {
            return "write the degree sign °";
        }
        if (Pattern.compile(shape.pattern(), Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE)
                .matcher(tidy)
                .matches()) {
            return "capital and small letters matter in the unit";
        }
        return null;
    }

    /** A comma is most often a decimal comma, but may also set off thousands: offers whichever would be read. */
    private static String commaHint(String text, Predicate<String> reads) {
        String point = text.replace(',', '.');
        String whole = text.replace(",", "");
        boolean thousands = SEPARATED.matcher(text).matches() && reads.test(whole);
        if (reads.test(point)) {
            return thousands ? "write " + point + ", or " + whole + " if thousands were meant" : "write " + point;
        }
        return thousands ? "write " + whole : "write decimals with a point and leave out thousands separators";
    }
}
