package akin.model.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class LightPulsesTest {
    private static final BigFraction MAINS_50 = BigFraction.of(50);
    private static final BigFraction MAINS_60 = BigFraction.of(60);
    private static final BigFraction FILM = BigFraction.of(24);
    private static final BigFraction SLOWED = BigFraction.of(24000, 1001);

    /** The source of each row stands in the file. */
    @ParameterizedTest(name = "{0} Hz, {1} fps, {2} deg: {4}")
    @CsvFileSource(resources = "/akin/published/flicker-safe.csv", numLinesToSkip = 1)
    void agreesWithPublishedAndDerivedSafeSettings(
            String mains, String fps, String angle, String exposure, String verdict, String note) {
        switch (verdict) {
            case "safe" -> {
                if (angle.equals("any")) {
                    assertThat(LightPulses.phase(anyAngleRate(fps, mains), decimal(mains))
                                    .standsStill())
                            .isTrue();
                } else {
                    BigFraction seconds = ExposureTiming.seconds(decimal(angle), rate(fps));
                    assertThat(seconds.doubleValue()).isCloseTo(Double.parseDouble(exposure), within(1e-9));
                    assertThat(LightPulses.safe(seconds, decimal(mains))).isTrue();
                    assertThat(LightPulses.bandingPercent(seconds, LightPulses.pulseHz(decimal(mains)), 1))
                            .isZero();
                    int n = (int) LightPulses.pulses(seconds, decimal(mains));
                    assertThat(LightPulses.safeAngle(n, rate(fps), decimal(mains)))
                            .isCloseTo(Double.parseDouble(angle), within(1e-9));
                }
            }
            case "not-safe" -> {
                BigFraction seconds = ExposureTiming.seconds(decimal(angle), rate(fps));
                assertThat(LightPulses.safe(seconds, decimal(mains))).isFalse();
                assertThat(LightPulses.bandingPercent(seconds, LightPulses.pulseHz(decimal(mains)), 1))
                        .isGreaterThan(1);
                assertThat(LightPulses.pulses(seconds, decimal(mains)))
                        .isCloseTo(after(note, "half-periods in exposure="), within(1e-6));
                assertThat(LightPulses.pulses(rate(fps).reciprocal(), decimal(mains)))
                        .isCloseTo(after(note, "light pulses per frame period="), within(1e-6));
            }
            case "angle-to-exposure" -> {
                BigFraction seconds = ExposureTiming.seconds(decimal(angle), rate(fps));
                assertThat(seconds.doubleValue()).isCloseTo(Double.parseDouble(exposure), within(1e-9));
                // the page prints whole denominators
                double printed = 1 / after(note, "published exposure 1/");
                assertThat(seconds.doubleValue() / printed).isCloseTo(1, within(0.005));
            }
            default -> throw new AssertionError("verdict that this test does not know: " + verdict);
        }
    }

    @Test
    void pulsesAreTwiceTheMains() {
        assertThat(LightPulses.pulseHz(MAINS_50)).isEqualTo(BigFraction.of(100));
        assertThat(LightPulses.pulses(BigFraction.of(1, 48), MAINS_50)).isCloseTo(2.0833, within(5e-5));
    }

    @Test
    void aFiftiethIsSafeUnder50HzOnly() {
        assertThat(LightPulses.safe(BigFraction.of(1, 50), MAINS_50)).isTrue();
        assertThat(LightPulses.safe(BigFraction.of(1, 50), MAINS_60)).isFalse();
        // half a pulse is no whole number of pulses, though its double is
        assertThat(LightPulses.safe(BigFraction.of(1, 200), MAINS_50)).isFalse();
    }

    @Test
    void roundedMenuAngleLeavesARippleThatNobodySees() {
        BigFraction menu = ExposureTiming.seconds(BigFraction.of(1728, 10), SLOWED);
        assertThat(LightPulses.pulses(menu, MAINS_50)).isCloseTo(2.002, within(1e-12));
        assertThat(LightPulses.safe(menu, MAINS_50)).isFalse();
        assertThat(LightPulses.safeWithin(menu, MAINS_50, 0.5)).isTrue();
        assertThat(LightPulses.safeWithin(menu, MAINS_50, 0.1)).isFalse();
        assertThat(LightPulses.bandingPercent(menu, BigFraction.of(100), 1)).isCloseTo(0.1998, within(5e-5));
    }

    @Test
    void toleranceCountsFromOnePulseUp() {
        assertThat(LightPulses.safeWithin(BigFraction.of(1, 48), MAINS_50, 0.5)).isFalse();
        assertThat(LightPulses.safeWithin(BigFraction.of(1, 50), MAINS_50, 0)).isTrue();
        // nearest to no pulse at all: never safe
        assertThat(LightPulses.safeWithin(BigFraction.of(1, 100_000), MAINS_50, 49))
                .isFalse();
        assertThat(LightPulses.safeWithin(BigFraction.of(99, 10_000), MAINS_50, 1))
                .isTrue();
    }

    @Test
    void listsSafeTimes() {
        assertThat(LightPulses.safeTimes(MAINS_50, BigFraction.of(1, 24)))
                .containsExactly(
                        BigFraction.of(1, 100), BigFraction.of(1, 50), BigFraction.of(3, 100), BigFraction.of(1, 25));
        assertThat(LightPulses.safeTimes(MAINS_50, BigFraction.of(1, 120))).isEmpty();
    }

    @Test
    void safeAnglesUnderBothMains() {
        // matching practice: 172.8 and 86.4 degrees; 143.856 and 215.784 degrees; common practice, no source
        assertThat(LightPulses.safeAngle(2, FILM, MAINS_50)).isCloseTo(172.8, within(1e-9));
        assertThat(LightPulses.safeAngle(1, FILM, MAINS_50)).isCloseTo(86.4, within(1e-9));
        assertThat(LightPulses.safeAngle(2, SLOWED, MAINS_60)).isCloseTo(143.856, within(5e-4));
        assertThat(LightPulses.safeAngle(3, SLOWED, MAINS_60)).isCloseTo(215.784, within(5e-4));
        assertThat(LightPulses.safeAngle(2, SLOWED, MAINS_50)).isCloseTo(172.627, within(5e-4));
    }

    @Test
    void findsTheNearestSafeTime() {
        assertThat(LightPulses.nearestSafeTime(BigFraction.of(1, 48), MAINS_50)).isEqualTo(BigFraction.of(1, 50));
        assertThat(LightPulses.nearestSafeTime(BigFraction.of(1, 8000), MAINS_50))
                .isEqualTo(BigFraction.of(1, 100));
        assertThat(LightPulses.nearestSafeTime(BigFraction.of(15, 1000), MAINS_50))
                .isEqualTo(BigFraction.of(1, 50));
    }

    @Test
    void framesMeetTheLightInPhaseOrBeat() {
        LightPulses.Phase locked = LightPulses.phase(FILM, MAINS_60);
        assertThat(locked.standsStill()).isTrue();
        assertThat(locked.pulsesPerFrame()).isEqualTo(BigInteger.valueOf(5));
        assertThat(locked.beatHz()).isZero();

        LightPulses.Phase slow = LightPulses.phase(SLOWED, MAINS_60);
        assertThat(slow.standsStill()).isFalse();
        assertThat(slow.pulsesPerFrame()).isEqualTo(BigInteger.valueOf(5));
        assertThat(slow.beatHz()).isCloseTo(0.1199, within(5e-5));

        LightPulses.Phase fast = LightPulses.phase(FILM, MAINS_50);
        assertThat(fast.pulsesPerFrame()).isEqualTo(BigInteger.valueOf(4));
        assertThat(fast.beatHz()).isEqualTo(4);

        LightPulses.Phase highSpeed = LightPulses.phase(BigFraction.of(1000), MAINS_50);
        assertThat(highSpeed.pulsesPerFrame()).isEqualTo(BigInteger.ZERO);
        assertThat(highSpeed.standsStill()).isFalse();
        assertThat(highSpeed.beatHz()).isEqualTo(100);
    }

    @Test
    void beatIsAtMostHalfTheFrameRate() {
        Random random = new Random(43);
        for (int i = 0; i < 500; i++) {
            BigFraction rate = BigFraction.of(1 + random.nextInt(240_000), 1001);
            BigFraction mains = BigFraction.of(1 + random.nextInt(6500), 100);
            assertThat(LightPulses.phase(rate, mains).beat()).isLessThanOrEqualTo(rate.divide(2));
        }
    }

    @Test
    void safeTimesAreExactlyThoseWithoutRipple() {
        Random random = new Random(44);
        int safe = 0;
        for (int i = 0; i < 2000; i++) {
            BigFraction mains = BigFraction.of(1 + random.nextInt(120), 1 + random.nextInt(3));
            BigFraction pulses = BigFraction.of(1 + random.nextInt(60), 1 + random.nextInt(6));
            BigFraction exposure = pulses.divide(LightPulses.pulseHz(mains));
            boolean still = LightPulses.bandingPercent(exposure, LightPulses.pulseHz(mains), 1) == 0;
            assertThat(LightPulses.safe(exposure, mains)).isEqualTo(still);
            assertThat(LightPulses.safeTimes(mains, exposure).contains(exposure))
                    .isEqualTo(still);
            safe += still ? 1 : 0;
        }
        // both kinds must have come up for the comparison to mean anything
        assertThat(safe).isBetween(100, 1900);
    }

    @Test
    void rippleOfRaisedCosineIsWhatSummingUpTheLightGives() {
        Random random = new Random(45);
        for (int i = 0; i < 20; i++) {
            double depth = random.nextDouble();
            BigFraction pulses = BigFraction.of(1 + random.nextInt(400), 100);
            BigFraction exposure = pulses.divide(100);
            double summed = summedRipple(pulses.doubleValue(), at -> 1 + depth * Math.cos(2 * Math.PI * at));
            assertThat(LightPulses.bandingPercent(exposure, BigFraction.of(100), depth))
                    .isCloseTo(summed, within(0.05));
        }
    }

    @Test
    void rippleOfSwitchedLightIsWhatSummingUpTheLightGives() {
        Random random = new Random(46);
        for (int i = 0; i < 20; i++) {
            double on = (5 + random.nextInt(95)) / 100.0;
            BigFraction pulses = BigFraction.of(101 + random.nextInt(900), 100);
            BigFraction exposure = pulses.divide(1000);
            double summed = summedRipple(pulses.doubleValue(), at -> at - Math.floor(at) < on ? 1 : 0);
            assertThat(LightPulses.switchedBandingPercent(exposure, BigFraction.of(1000), on))
                    .isCloseTo(summed, within(2.0));
        }
    }

    @Test
    void switchedLightAtItsEnds() {
        BigFraction exposure = BigFraction.of(1, 48);
        assertThat(LightPulses.switchedBandingPercent(exposure, BigFraction.of(1000), 0.5))
                .isCloseTo(1.6, within(1e-9));
        assertThat(LightPulses.switchedBandingPercent(exposure, BigFraction.of(960), 0.5))
                .isZero();
        assertThat(LightPulses.switchedBandingPercent(exposure, BigFraction.of(1000), 1))
                .isCloseTo(0, within(1e-12));
    }

    @Test
    void steadyLightDoesNotRipple() {
        assertThat(LightPulses.bandingPercent(BigFraction.of(1, 48), BigFraction.of(100), 0))
                .isZero();
    }

    @Test
    void refusesWhatIsOutOfRange() {
        BigFraction exposure = BigFraction.of(1, 50);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LightPulses.safe(exposure, BigFraction.ZERO))
                .withMessage("mains frequency must be above 0 Hz, was 0");
        assertThatIllegalArgumentException().isThrownBy(() -> LightPulses.pulses(BigFraction.ZERO, MAINS_50));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LightPulses.safeWithin(exposure, MAINS_50, 50))
                .withMessageContaining("below 50 %");
        assertThatIllegalArgumentException().isThrownBy(() -> LightPulses.safeWithin(exposure, MAINS_50, Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> LightPulses.safeAngle(0, FILM, MAINS_50));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LightPulses.safeTimes(MAINS_50, BigFraction.of(1001)))
                .withMessageContaining("100000 pulses");
        assertThatIllegalArgumentException().isThrownBy(() -> LightPulses.phase(BigFraction.ZERO, MAINS_50));
        for (double depth : new double[] {-0.1, 1.1, Double.NaN}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> LightPulses.bandingPercent(exposure, BigFraction.of(100), depth));
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> LightPulses.switchedBandingPercent(exposure, BigFraction.of(100), depth));
        }
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LightPulses.switchedBandingPercent(exposure, BigFraction.of(100), 0));
    }

    /** Peak to peak over all starts, in percent of the mean, by summing up the light in small steps. */
    private static double summedRipple(double pulses, DoubleUnaryOperator light) {
        int steps = 4000;
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        double total = 0;
        int starts = 200;
        for (int s = 0; s < starts; s++) {
            double sum = 0;
            for (int i = 0; i < steps; i++) {
                sum += light.applyAsDouble((double) s / starts + pulses * (i + 0.5) / steps);
            }
            low = Math.min(low, sum);
            high = Math.max(high, sum);
            total += sum;
        }
        return 100 * (high - low) / (total / starts);
    }

    /** The list prints 120 / k to three places. */
    private static BigFraction anyAngleRate(String fps, String mains) {
        BigFraction light = LightPulses.pulseHz(decimal(mains));
        long k = Math.round(light.doubleValue() / Double.parseDouble(fps));
        BigFraction exact = light.divide(BigFraction.of(k));
        assertThat(exact.doubleValue()).isCloseTo(Double.parseDouble(fps), within(5e-4));
        return exact;
    }

    private static BigFraction rate(String fps) {
        return switch (fps) {
            case "23.976" -> SLOWED;
            case "29.97" -> BigFraction.of(30000, 1001);
            default -> decimal(fps);
        };
    }

    private static BigFraction decimal(String text) {
        BigDecimal value = new BigDecimal(text);
        return BigFraction.of(
                value.movePointRight(value.scale()).toBigIntegerExact(), BigInteger.TEN.pow(value.scale()));
    }

    private static double after(String note, String label) {
        int from = note.indexOf(label);
        assertThat(from).as("the note holds \"%s\"", label).isNotNegative();
        List<String> parts = List.of(note.substring(from + label.length()).split(";", -1));
        return Double.parseDouble(parts.get(0));
    }
}
