package akin.model.gear;

import org.jspecify.annotations.Nullable;

/**
 * What is written to the medium.
 *
 * @param id the word a rig file uses for it
 * @param kind raw photosite values or an encoded picture
 * @param bits bits a sample
 * @param chroma chroma sampling, such as {@code 4:2:2}
 * @param data how much it writes
 */
public record Codec(
        String id,
        @Nullable Kind kind,
        @Nullable Integer bits,
        @Nullable String chroma,
        @Nullable DataFlow data,
        @Nullable String source) {

    /** Whether the picture is developed before it is written. */
    public enum Kind {
        /** Photosite values: white balance and ISO are set in post. */
        RAW("raw"),
        /** A developed picture in an encoding. */
        ENCODED("encoded");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The word used in gear files. */
        public String word() {
            return word;
        }

        @Override
        public String toString() {
            return word;
        }
    }
}
