package akin.model.quantity;

/**
 * A data rate, from 0 to 10 Tbit/s. Prefixes are decimal; a byte is 8 bits.
 *
 * @param bitsPerSecond bits per second
 */
public record DataRate(double bitsPerSecond) {
    /** How a data rate may be written. */
    public static final String ALLOWED = "bits or bytes per second (400 Mbit/s, 1.2 Gbit/s, 400 MB/s)";

    /** The shape of {@link #ALLOWED}. */
    public static final String PATTERN =
            "^(" + Notation.NUMBER + ")" + Notation.GAP + "(bit/s|kbit/s|Mbit/s|Gbit/s|Tbit/s|B/s|kB/s|MB/s|GB/s)$";

    private static final Notation NOTATION = new Notation("data rate", ALLOWED, PATTERN, "from 0 bit/s to 10 Tbit/s")
            .bare("write $1 MB/s or $1 Mbit/s")
            .hint(
                    "(" + Notation.NUMBER + ") *([kKmMgGtT]?)(?:b|b/s|bps|Bps)?",
                    "bytes or bits: write $1 $2B/s or $1 $2bit/s");

    public DataRate {
        NOTATION.check(bitsPerSecond >= 0 && bitsPerSecond <= 1e13, bitsPerSecond);
        bitsPerSecond += 0.0;
    }

    /**
     * Reads {@code 400 Mbit/s}, {@code 1.2 Gbit/s}, {@code 400 MB/s}.
     *
     * @throws QuantityException if the text is not that; a rate that does not say bits or bytes is refused
     */
    public static DataRate parse(String text) {
        return NOTATION.read(text, m -> {
            String factor = switch (m.group(2)) {
                case "bit/s" -> "1";
                case "kbit/s" -> "1000";
                case "Mbit/s" -> "1000000";
                case "Gbit/s" -> "1000000000";
                case "Tbit/s" -> "1000000000000";
                case "B/s" -> "8";
                case "kB/s" -> "8000";
                case "MB/s" -> "8000000";
                default -> "8000000000";
            };
            return new DataRate(Notation.scaled(m.group(1), factor));
        });
    }

    /** "400 Mbit/s", "3.2 Gbit/s". */
    @Override
    public String toString() {
        if (bitsPerSecond >= 1e12) {
            return Notation.plain(bitsPerSecond, 12) + " Tbit/s";
        }
        if (bitsPerSecond >= 1e9) {
            return Notation.plain(bitsPerSecond, 9) + " Gbit/s";
        }
        if (bitsPerSecond >= 1e6) {
            return Notation.plain(bitsPerSecond, 6) + " Mbit/s";
        }
        if (bitsPerSecond >= 1000) {
            return Notation.plain(bitsPerSecond, 3) + " kbit/s";
        }
        return Notation.plain(bitsPerSecond) + " bit/s";
    }
}
