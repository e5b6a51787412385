package akin.model.look;

import akin.model.colour.Gamut;
import akin.model.colour.Matrix3;
import akin.model.gear.SignalRange;
import akin.model.tone.Encoding;
import akin.model.tone.SignalLevel;
import java.util.Objects;

/**
 * What a look-up table for one unit has to hold: code values of its encoding and gamut, through the look, to those of the
 * display. Numbers are 0 to 1 on either side.
 *
 * @param encoding what the unit records
 * @param gamut what the unit records
 * @param look the look
 * @param takes what 0 to 1 going in stands for: the lowest to the highest code, or black to white of video
 * @param gives what 0 to 1 coming out stands for
 */
public record LookTable(Encoding encoding, Gamut gamut, ViewingLook look, SignalRange takes, SignalRange gives) {

    /** Why a recording gets no table of this look. */
    public enum Unfit {
        /** It is a finished picture for a display; a look would be put on top of one. */
        FINISHED,
        /** It is proportional to light, and is seen through what it is developed to. */
        UNDEVELOPED
    }

    /** @throws IllegalArgumentException when the encoding is not one of scene light in code values */
    public LookTable {
        Objects.requireNonNull(gamut, "gamut");
        Objects.requireNonNull(look, "look");
        if (unfit(encoding) != null) {
            throw new IllegalArgumentException(encoding.name() + " gets no look: " + unfit(encoding));
        }
    }

    /** Why a recording of this encoding gets no table; null when it can have one. */
    public static @org.jspecify.annotations.Nullable Unfit unfit(Encoding encoding) {
        if (Viewing.shows(encoding)) {
            return Unfit.FINISHED;
        }
        return encoding.kind() == Encoding.Kind.LINEAR ? Unfit.UNDEVELOPED : null;
    }

    /** Scene-linear light for a number going in, channel by channel. */
    public double decode(double in) {
        return encoding.decode(takes == SignalRange.FULL ? in : SignalLevel.legalToFull(in));
    }

    /** The number coming out for a signal of the display, channel by channel. */
    public double finish(double signal) {
        double share = look.finish(signal);
        double out = gives == SignalRange.FULL ? share : SignalLevel.fullToLegal(share);
        return Math.min(1, Math.max(0, out));
    }

    /** The stages as one function from three numbers to three. */
    public Exact exact() {
        return new Exact(this);
    }

    /** The whole of a table as a function, with its matrices worked out. */
    public static final class Exact {
        private final LookTable table;
        private final Matrix3 toWorking;
        private final Matrix3 toDisplay;

        private Exact(LookTable table) {
            this.table = table;
            this.toWorking = table.look.toWorking(table.gamut);
            this.toDisplay = table.look.toDisplay();
        }

        /** What comes out for what goes in, red, green and blue. */
        public double[] apply(double... in) {
            double[] light = toWorking.times(each(in, table::decode));
            return each(toDisplay.times(each(light, table.look::tone)), table::finish);
        }

        private static double[] each(double[] values, java.util.function.DoubleUnaryOperator stage) {
            return java.util.Arrays.stream(values).map(stage).toArray();
        }

        /** What comes out for channels already decoded: a cube decodes each edge only once. */
        double[] ofLight(double[] light) {
            return each(toDisplay.times(each(toWorking.times(light), table.look::tone)), table::finish);
        }
    }
}
