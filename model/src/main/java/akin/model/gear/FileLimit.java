package akin.model.gear;

import akin.model.quantity.DataSize;
import org.jspecify.annotations.Nullable;

/**
 * How large one file may grow before the device starts the next.
 *
 * @param bytes largest file in bytes; null when files are never split
 */
public record FileLimit(@Nullable Double bytes) {

    /** The word for no limit. */
    public static final String NONE = "none";

    /** The word for cards in the FAT32 file system. */
    public static final String FAT32 = "fat32";

    /** The largest file of FAT32, 2^32 - 1 bytes. Source: IBM storage documentation, table of file system limits. */
    public static final double FAT32_BYTES = 4_294_967_295.0;

    /**
     * Reads {@code none}, {@code fat32} or a size such as {@code 4 GB}.
     *
     * @throws akin.model.quantity.QuantityException if the text is none of them
     */
    public static FileLimit parse(String text) {
        return switch (text) {
            case NONE -> new FileLimit(null);
            case FAT32 -> new FileLimit(FAT32_BYTES);
            default -> new FileLimit(DataSize.parse(text).bytes());
        };
    }

    /**
     * Files that a clip of this size is split into.
     *
     * @param clipBytes size of the clip in bytes, 0 or above
     * @return 1 or more
     */
    public long files(double clipBytes) {
        return bytes == null ? 1 : Math.max(1, (long) Math.ceil(clipBytes / bytes));
    }
}
