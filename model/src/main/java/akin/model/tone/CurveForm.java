package akin.model.tone;

/**
 * A formula with an exact inverse that one piece of a curve follows. All forms rise with their input, or are flat; a
 * form that would fall is refused when it is built.
 */
public sealed interface CurveForm permits CurveForm.Linear, CurveForm.Log, CurveForm.Power, CurveForm.Pq {

    /**
     * The curve's value.
     *
     * @param x input: scene-linear light times the encoding's input scale
     * @return the value, on the encoding's code scale
     */
    double at(double x);

    /**
     * The input that gives a value.
     *
     * @param y value on the encoding's code scale
     * @return the input, the brightest one where the form is flat; infinite when there is no brightest
     */
    double inverse(double y);

    /** Whether the formula has a real, finite value at this input. */
    boolean holdsAt(double x);

    /** {@code slope * x + offset}. A slope of 0 makes a flat piece, as for negative light in some log curves. */
    record Linear(double slope, double offset) implements CurveForm {
        public Linear {
            requireFinite("slope", slope);
            requireFinite("offset", offset);
            requireRising(slope >= 0, "linear: slope must not be negative, was " + slope);
        }

        @Override
        public double at(double x) {
            return slope * x + offset;
        }

        @Override
        public double inverse(double y) {
            return slope == 0 ? Double.POSITIVE_INFINITY : (y - offset) / slope;
        }

        @Override
        public boolean holdsAt(double x) {
            return true;
        }
    }

    /**
     * {@code scale * log_base(gain * x + shift) + offset}. Scale and gain are both negative for a branch that mirrors
     * the logarithm below zero.
     */
    record Log(double base, double scale, double gain, double shift, double offset) implements CurveForm {
        public Log {
            requireFinite("base", base);
            requireFinite("scale", scale);
            requireFinite("gain", gain);
            requireFinite("shift", shift);
            requireFinite("offset", offset);
            if (base <= 1) {
                throw new IllegalArgumentException("log: base must be greater than 1, was " + base);
            }
            requireRising(scale * gain > 0, "log: scale and gain must be of one sign and not 0");
        }

        @Override
        public double at(double x) {
            return scale * logBase(gain * x + shift) + offset;
        }

        @Override
        public double inverse(double y) {
            return (Math.pow(base, (y - offset) / scale) - shift) / gain;
        }

        @Override
        public boolean holdsAt(double x) {
            return gain * x + shift > 0;
        }

        private double logBase(double value) {
            // The two usual bases have exact library or exact-ratio forms; a quotient of natural logarithms is one
            // unit in the last place off at whole powers of ten.
            return base == 10 ? Math.log10(value) : Math.log(value) / Math.log(base);
        }
    }

    /**
     * {@code scale * max(0, gain * x + shift)^exponent + offset}. The piece is flat where the bracket would be
     * negative, so that a root needs no extra piece for negative light.
     */
    record Power(double scale, double gain, double shift, double exponent, double offset) implements CurveForm {
        public Power {
            requireFinite("scale", scale);
            requireFinite("gain", gain);
            requireFinite("shift", shift);
            requireFinite("exponent", exponent);
            requireFinite("offset", offset);
            if (exponent <= 0) {
                throw new IllegalArgumentException("power: exponent must be greater than 0, was " + exponent);
            }
            requireRising(scale * gain > 0, "power: scale and gain must be of one sign and not 0");
        }

        @Override
        public double at(double x) {
            return scale * Math.pow(Math.max(0, gain * x + shift), exponent) + offset;
        }

        @Override
        public double inverse(double y) {
            return (Math.pow(Math.max(0, (y - offset) / scale), 1 / exponent) - shift) / gain;
        }

        @Override
        public boolean holdsAt(double x) {
            return true;
        }
    }

    /**
     * The perceptual quantiser: {@code ((c1 + c2 Y^m1) / (1 + c3 Y^m1))^m2} with {@code Y = max(0, x) / peak}.
     *
     * <p>Source: SMPTE ST 2084, Rec. ITU-R BT.2100 (inverse of the electro-optical transfer function), with m1 =
     * 2610/16384, m2 = 2523/4096 x 128, c1 = 3424/4096, c2 = 2413/4096 x 32, c3 = 2392/4096 x 32.
     *
     * @param peak input that gives the value 1, in the input's unit; 10 000 cd/m2 by the standard
     */
    record Pq(double peak) implements CurveForm {
        private static final double M1 = 2610.0 / 16384;
        private static final double M2 = 2523.0 / 4096 * 128;
        private static final double C1 = 3424.0 / 4096;
        private static final double C2 = 2413.0 / 4096 * 32;
        private static final double C3 = 2392.0 / 4096 * 32;

        public Pq {
            requireFinite("peak", peak);
            if (peak <= 0) {
                throw new IllegalArgumentException("pq: peak must be greater than 0, was " + peak);
            }
        }

        @Override
        public double at(double x) {
            double y = Math.pow(Math.max(0, x) / peak, M1);
            return Math.pow((C1 + C2 * y) / (1 + C3 * y), M2);
        }

        @Override
        public double inverse(double value) {
            double e = Math.pow(Math.max(0, value), 1 / M2);
            double denominator = C2 - C3 * e;
            // The quantiser levels off a little above 1; beyond that no light gives the value.
            return denominator <= 0
                    ? Double.POSITIVE_INFINITY
                    : peak * Math.pow(Math.max(0, e - C1) / denominator, 1 / M1);
        }

        @Override
        public boolean holdsAt(double x) {
            return true;
        }
    }

    private static void requireFinite(String what, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(what + " must be a finite number, was " + value);
        }
    }

    private static void requireRising(boolean rising, String otherwise) {
        if (!rising) {
            throw new IllegalArgumentException(otherwise + "; a curve may not fall");
        }
    }
}
