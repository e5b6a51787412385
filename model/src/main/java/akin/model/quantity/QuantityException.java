package akin.model.quantity;

import org.jspecify.annotations.Nullable;

/** Says that a text or a number is not the quantity it should be, and how that quantity may be written. */
public final class QuantityException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;
    private static final int LONGEST_QUOTE = 64;

    private final String quantity;
    private final String read;
    private final String allowed;
    private final @Nullable String hint;

    /**
     * @param quantity what was expected, such as "shutter"
     * @param read the text that was read, whole
     * @param allowed how the quantity may be written
     * @param hint what was probably meant, or the range it must keep to; null when there is nothing to add
     */
    public QuantityException(String quantity, String read, String allowed, @Nullable String hint) {
        super(sentence(quantity, read, allowed, hint));
        this.quantity = quantity;
        this.read = read;
        this.allowed = allowed;
        this.hint = hint;
    }

    /** What was expected, such as "shutter". */
    public String quantity() {
        return quantity;
    }

    /** The text that was read, whole and unescaped; the message shows at most 64 characters of it. */
    public String read() {
        return read;
    }

    /** How the quantity may be written, such as "an angle (180°, 180 deg) or a time (1/50, 1/50 s)". */
    public String allowed() {
        return allowed;
    }

    /** What was probably meant, or the range to keep to; null when there is nothing to add. */
    public @Nullable String hint() {
        return hint;
    }

    /** The same complaint about the text that the value came from. */
    QuantityException reading(String text) {
        return new QuantityException(quantity, text, allowed, hint);
    }

    private static String sentence(String quantity, String read, String allowed, @Nullable String hint) {
        String article = "aeiouAEIOU".indexOf(quantity.charAt(0)) >= 0 ? "an " : "a ";
        String start = quote(read) + " is not " + article + quantity + ": write " + allowed;
        return hint == null ? start : start + "; " + hint;
    }

    /** Keeps a hostile text from breaking the line, hiding parts of itself or filling the screen. */
    private static String quote(String text) {
        StringBuilder out = new StringBuilder("\"");
        int shown = 0;
        for (int i = 0; i < text.length(); shown++) {
            if (shown == LONGEST_QUOTE) {
                out.append('…');
                break;
            }
            int c = text.codePointAt(i);
            if (printable(c)) {
                out.appendCodePoint(c);
            } else {
                out.append("\\u{").append(Integer.toHexString(c)).append('}');
            }
            i += Character.charCount(c);
        }
        return out.append('"').toString();
    }

    private static boolean printable(int c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.SURROGATE,
                    Character.PRIVATE_USE,
                    Character.UNASSIGNED -> false;
            default -> true;
        };
    }
}
