package akin.model.quantity;

/**
 * A span of time, from 0 to 10000 hours.
 *
 * @param milliseconds milliseconds
 */
public record Timespan(double milliseconds) {
    /** How a time may be written. */
    public static final String ALLOWED = "a number with its unit (16.2 ms, 250 µs, 1.5 s, 40 min, 2 h)";

    /** The shape of {@link #ALLOWED}. */
    public static final String PATTERN = "^(" + Notation.NUMBER + ")" + Notation.GAP + "(us|µs|μs|ms|s|min|h)$";

    private static final Notation NOTATION =
            new Notation("time", ALLOWED, PATTERN, "from 0 s to 10000 h").bare("write $1 ms or $1 s");

    public Timespan {
        NOTATION.check(milliseconds >= 0 && milliseconds <= 3.6e10, milliseconds);
        milliseconds += 0.0;
    }

    /**
     * Reads {@code 16.2 ms}, {@code 250 us}, {@code 250 µs}, {@code 1.5 s}, {@code 40 min}, {@code 2 h}.
     *
     * @throws QuantityException if the text is not that; a number without its unit is refused
     */
    public static Timespan parse(String text) {
        return NOTATION.read(text, m -> {
            String factor = switch (m.group(2)) {
                case "us", "µs", "μs" -> "0.001";
                case "ms" -> "1";
                case "s" -> "1000";
                case "min" -> "60000";
                default -> "3600000";
            };
            return new Timespan(Notation.scaled(m.group(1), factor));
        });
    }

    /** "250 µs", "16.2 ms", "1.5 s", "40 min", "2 h". */
    @Override
    public String toString() {
        if (milliseconds >= 60_000 && milliseconds % 60_000 == 0) {
            boolean hours = milliseconds % 3_600_000 == 0;
            return Notation.plain(milliseconds / (hours ? 3_600_000 : 60_000)) + (hours ? " h" : " min");
        }
        if (milliseconds >= 1000) {
            return Notation.plain(milliseconds, 3) + " s";
        }
        return milliseconds > 0 && milliseconds < 1
                ? Notation.plain(milliseconds, -3) + " µs"
                : Notation.plain(milliseconds) + " ms";
    }
}
