package akin.model.quantity;

/**
 * An amount of data, from 0 to 1000 PB. Decimal prefixes (GB) and binary ones (GiB, IEC 80000-13) differ.
 *
 * @param bytes bytes
 */
public record DataSize(double bytes) {
    /** How a data size may be written. */
    public static final String ALLOWED = "a number with its unit (512 GB, 1 TB, 480 GiB)";

    /** The shape of {@link #ALLOWED}. */
    public static final String PATTERN =
            "^(" + Notation.NUMBER + ")" + Notation.GAP + "(B|kB|MB|GB|TB|PB|KiB|MiB|GiB|TiB)$";

    private static final Notation NOTATION =
            new Notation("data size", ALLOWED, PATTERN, "from 0 B to 1000 PB").bare("write $1 GB or $1 TB");
    private static final double GIB = 1L << 30;

    public DataSize {
        NOTATION.check(bytes >= 0 && bytes <= 1e18, bytes);
        bytes += 0.0;
    }

    /**
     * Reads {@code 512 GB}, {@code 1 TB}, {@code 480 GiB}.
     *
     * @throws QuantityException if the text is not that; a number without its unit is refused
     */
    public static DataSize parse(String text) {
        return NOTATION.read(text, m -> {
            String factor = switch (m.group(2)) {
                case "B" -> "1";
                case "kB" -> "1000";
                case "MB" -> "1000000";
                case "GB" -> "1000000000";
                case "TB" -> "1000000000000";
                case "PB" -> "1000000000000000";
                case "KiB" -> "1024";
                case "MiB" -> "1048576";
                case "GiB" -> "1073741824";
                default -> "1099511627776";
            };
            return new DataSize(Notation.scaled(m.group(1), factor));
        });
    }

    /** "512 GB", "1 TB"; "480 GiB" where that is the round number. */
    @Override
    public String toString() {
        if (bytes >= GIB && bytes % GIB == 0 && bytes % 1e6 != 0) {
            boolean tebi = bytes % (1024 * GIB) == 0;
            return Notation.plain(bytes / (tebi ? 1024 * GIB : GIB)) + (tebi ? " TiB" : " GiB");
        }
        if (bytes >= 1e12) {
            return Notation.plain(bytes, 12) + " TB";
        }
        if (bytes >= 1e9) {
            return Notation.plain(bytes, 9) + " GB";
        }
        if (bytes >= 1e6) {
            return Notation.plain(bytes, 6) + " MB";
        }
        if (bytes >= 1000) {
            return Notation.plain(bytes, 3) + " kB";
        }
        return Notation.plain(bytes) + " B";
    }
}
