package akin.engine.read;

import akin.model.gear.SignalRange;
import akin.model.quantity.Level;
import akin.model.quantity.Percent;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Readings of test shots as they are written, in a file of their own or in the rig file.
 *
 * @param akinReadings version of the format, in a file of its own
 * @param chart id of the chart whose patches were read
 * @param precision how far the aid that levels were read on may be off, in per cent of the legal range
 * @param units what was read, by name of the unit
 */
public record ReadingsSheet(
        @Nullable Integer akinReadings,
        @Nullable String chart,
        @Nullable Percent precision,
        @JsonProperty(required = true) Map<String, ReadingSheet> units) {

    /** The format version that this program reads. */
    public static final int VERSION = 1;

    /** What was read of one unit. */
    public record ReadingSheet(
            @Nullable LevelsSheet grey,
            @Nullable LevelsSheet white,
            @Nullable LevelsSheet clip,
            @Nullable BlackSheet black,
            @Nullable List<LevelsSheet> patches,
            @Nullable FrameSheet frame) {

        /** True when nothing was read. */
        public boolean empty() {
            return grey == null && white == null && clip == null && black == null && patches == null && frame == null;
        }
    }

    /** The capped lens: the level, and how far it dances about it. */
    public record BlackSheet(
            @JsonProperty(required = true) LevelRead level,
            @JsonProperty(required = true) LevelRead noise) {}

    /** A frame with a chart in it, to be sampled. */
    public record FrameSheet(
            @JsonProperty(required = true) String file,
            @JsonProperty(required = true) List<List<Double>> corners,
            @Nullable SignalRange levels) {}

    /**
     * The level of a patch: one, of brightness; or three, of red, green and blue.
     *
     * @param levels one or three
     */
    public record LevelsSheet(List<LevelRead> levels) {

        /** Copies the list; one level or three. */
        public LevelsSheet {
            levels = List.copyOf(levels);
            if (levels.size() != 1 && levels.size() != 3) {
                throw new IllegalArgumentException("read " + levels.size()
                        + " levels; a patch has one, of brightness, or three: [red, green, blue]");
            }
        }
    }

    /**
     * A level and half the step it was written to: 41 % may have been anything from 40.5 % to 41.5 %.
     *
     * @param level the level
     * @param half half a step, as a share of the full code range
     */
    public record LevelRead(Level level, double half) {

        private static final Pattern CODE = Pattern.compile("code\\s+\\S+\\s+of\\s+(\\S+)");
        private static final Pattern NUMBER = Pattern.compile("[+-]?[0-9]+(?:\\.([0-9]+))?");
        private static final double LEGAL_SPAN = 876.0 / 1023;

        /** Reads a level as {@link Level#parse} does. */
        public static LevelRead parse(String text) {
            Level level = Level.parse(text);
            Matcher code = CODE.matcher(text);
            if (code.matches()) {
                return new LevelRead(level, 0.5 / Integer.parseInt(code.group(1)));
            }
            Matcher number = NUMBER.matcher(text);
            int decimals = number.lookingAt() && number.group(1) != null
                    ? number.group(1).length()
                    : 0;
            double step = BigDecimal.ONE.movePointLeft(decimals + 2).doubleValue();
            return new LevelRead(level, step / 2 * span(level));
        }

        /** The level as a share of the full code range. */
        public double full() {
            return level.toFull().share();
        }

        /** The level taken as a difference of levels, as a share of the full code range. */
        public double difference() {
            return level.share() * span(level);
        }

        private static double span(Level level) {
            return level.range() == Level.Range.LEGAL ? LEGAL_SPAN : 1;
        }
    }

    /** What {@code 1 %} of the legal range is of the full code range, as of {@link #precision}. */
    public double give() {
        return precision == null ? 0 : precision.value() / 100 * LevelRead.LEGAL_SPAN;
    }
}
