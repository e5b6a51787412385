package akin.engine.report.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * Where a number lies on an axis.
 *
 * @param from number at the start of the axis
 * @param to number at its end, above {@code from}
 * @param start coordinate of the start
 * @param end coordinate of the end
 * @param even true when equal steps are equally long; false when equal ratios are, both numbers then being above 0
 */
record Scale(double from, double to, double start, double end, boolean even) {

    private static final double[] STEPS = {1, 2, 5, 10};
    private static final double SLACK = 1e-9;

    static Scale even(double from, double to, double start, double end) {
        return new Scale(from, to, start, end, true);
    }

    static Scale ratios(double from, double to, double start, double end) {
        return new Scale(from, to, start, end, false);
    }

    /** The coordinate of a number. */
    double at(double value) {
        double share = even ? (value - from) / (to - from) : Math.log(value / from) / Math.log(to / from);
        return start + share * (end - start);
    }

    /** True when a number lies on the axis. */
    boolean holds(double value) {
        return value >= from - SLACK && value <= to + SLACK;
    }

    /** Round numbers on the axis, ascending, at most so many, in ratios of 1, 2 and 5 where ratios are what counts. */
    List<Double> ticks(int most) {
        if (!even) {
            List<Double> decades = new ArrayList<>();
            for (double ten = Math.pow(10, Math.floor(Math.log10(from))); ten <= to; ten *= 10) {
                for (int i = 0; i < STEPS.length - 1; i++) {
                    if (holds(STEPS[i] * ten)) {
                        decades.add(STEPS[i] * ten);
                    }
                }
            }
            if (decades.size() >= 3) {
                int every = (decades.size() + most - 1) / most;
                List<Double> some = new ArrayList<>();
                for (int i = 0; i < decades.size(); i += every) {
                    some.add(decades.get(i));
                }
                return some;
            }
        }
        double least = (to - from) / most;
        double ten = Math.pow(10, Math.floor(Math.log10(least)));
        double step = 10 * ten;
        for (double s : STEPS) {
            if (s * ten >= least * (1 - SLACK)) {
                step = s * ten;
                break;
            }
        }
        List<Double> ticks = new ArrayList<>();
        for (long i = (long) Math.ceil(from / step - SLACK); i * step <= to + SLACK; i++) {
            ticks.add(i * step);
        }
        return ticks;
    }
}
