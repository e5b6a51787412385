package akin.model.rig;

/**
 * What the units are matched to.
 *
 * @param hero name of the unit that the others are matched to
 * @param tolerances how far apart they may be
 * @param view the side of the picture by which views are matched
 */
public record Match(String hero, Tolerances tolerances, ViewAxis view) {

    /** The side of the picture by which views are matched. */
    public enum ViewAxis {
        /** The width: the usual choice. */
        HORIZONTAL("horizontal"),
        /** The height. */
        VERTICAL("vertical"),
        /** The diagonal. */
        DIAGONAL("diagonal");

        private final String word;

        ViewAxis(String word) {
            this.word = word;
        }

        /** The word used in rig files. */
        public String word() {
            return word;
        }

        @Override
        public String toString() {
            return word;
        }
    }
}
