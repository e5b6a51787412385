package akin.model.rig;

import akin.model.gear.TimecodeSource;
import akin.model.quantity.Frequency;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * How a unit is kept in step with the others.
 *
 * @param source where its timecode comes from; null when not said
 * @param counting how its timecode counts; null when not said
 * @param boxPpm how far the generator on it may be off, in parts per million; null when not said or none
 * @param soundRate its sound sampling rate; null when not said
 * @param scratch true when it records sound for reference; null when not said
 * @param clock time zone that its clock is set to; null when not said
 * @param clockDate date that its clock shows on the first day; null when not said
 */
public record SyncPlan(
        @Nullable TimecodeSource source,
        @Nullable Counting counting,
        @Nullable Double boxPpm,
        @Nullable Frequency soundRate,
        @Nullable Boolean scratch,
        @Nullable String clock,
        @Nullable LocalDate clockDate) {

    /** Nothing said. */
    public static final SyncPlan UNSAID = new SyncPlan(null, null, null, null, null, null, null);

    /** How timecode counts frames. */
    public enum Counting {
        /** Leaves out labels, so as to keep pace with the clock. */
        DROP("drop"),
        /** Counts every frame. */
        NON_DROP("non-drop");

        private final String word;

        Counting(String word) {
            this.word = word;
        }

        /** The word used in rig files. */
        @Override
        public String toString() {
            return word;
        }
    }
}
