package akin.model.tone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import akin.published.SharedData;
import java.util.Collection;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold for any curve, held against every shipped one with generated light and code values. */
class ShippedEncodingsTest {
    private static final int SAMPLES = 1000;

    /**
     * Steps where the published, rounded constants of two pieces do not meet, in values of the curve: the widest is a
     * quarter of a 10-bit code value. All other curves meet within {@link #ROUNDING}, the sixth decimal that constants
     * are commonly printed to.
     */
    private static final Map<String, Double> PUBLISHED_STEPS = Map.of(
            "bt709", 0.000248,
            "dji-d-log", 0.0000021,
            "fujifilm-f-log", 0.000101,
            "nikon-n-log", 0.000127);

    private static final double ROUNDING = 1e-6;

    static Collection<Encoding> encodings() {
        return SharedData.encodings().values();
    }

    @ParameterizedTest
    @MethodSource("encodings")
    void decodeUndoesEncode(Encoding encoding) {
        Random random = new Random(20_480);
        double top = Math.min(encoding.ceiling(), 1e4);
        int inside = 0;
        for (int i = 0; i < SAMPLES; i++) {
            // Even in stops, as light is: 16 stops down from the ceiling.
            double light = top * Math.pow(2, -16 * random.nextDouble());
            double code = encoding.encode(light);
            if (isInsideAStep(encoding, code)) {
                inside++;
            } else {
                assertThat(encoding.decode(code)).as("light %s", light).isCloseTo(light, within(light * 1e-9));
            }
        }
        assertThat(inside).as("codes that stand for two amounts of light").isLessThan(SAMPLES / 100);
    }

    @ParameterizedTest
    @MethodSource("encodings")
    void encodeUndoesDecode(Encoding encoding) {
        Random random = new Random(4_711);
        double black = encoding.encode(0);
        double top = encoding.kind() == Encoding.Kind.LINEAR ? 1 : encoding.encode(encoding.ceiling());
        int inside = 0;
        for (int i = 0; i < SAMPLES; i++) {
            double code = black + (top - black) * random.nextDouble();
            if (isInsideAStep(encoding, code)) {
                inside++;
            } else {
                assertThat(encoding.encode(encoding.decode(code))).isCloseTo(code, within(1e-12));
            }
        }
        assertThat(inside).as("codes that no light has").isLessThan(SAMPLES / 100);
    }

    @ParameterizedTest
    @MethodSource("encodings")
    void moreLightNeverGivesALowerCode(Encoding encoding) {
        Random random = new Random(97);
        double top = Math.min(encoding.ceiling(), 1e4);
        double step = step(encoding);
        for (int i = 0; i < SAMPLES; i++) {
            double dark = top * (1.02 * Math.pow(random.nextDouble(), 6) - 0.02);
            double bright = dark + top * Math.pow(random.nextDouble(), 6);
            assertThat(encoding.encode(bright)).isGreaterThanOrEqualTo(encoding.encode(dark) - step);
            assertThat(encoding.encode(bright)).isFinite();
        }
        assertThat(encoding.encode(0.18)).isGreaterThan(encoding.encode(0.17));
    }

    @ParameterizedTest
    @MethodSource("encodings")
    void piecesMeet(Encoding encoding) {
        double widest = 0;
        for (int i = 1; i < encoding.pieces().size(); i++) {
            double border = encoding.pieces().get(i - 1).until();
            double below = encoding.pieces().get(i - 1).form().at(border);
            double above = encoding.pieces().get(i).form().at(border);
            widest = Math.max(widest, Math.abs(above - below));
        }
        assertThat(widest).isLessThanOrEqualTo(step(encoding));
        // A named step must be real, or the list above would hide nothing and say something false.
        assertThat(widest).isGreaterThanOrEqualTo(0.9 * PUBLISHED_STEPS.getOrDefault(encoding.id(), 0.0));
    }

    @Test
    void ceilingsAreTheLightAtTheClipCode() {
        for (Encoding encoding : encodings()) {
            if (encoding.kind() == Encoding.Kind.LINEAR) {
                assertThat(encoding.ceiling()).isInfinite();
                continue;
            }
            Double clip = encoding.clipCode();
            assertThat(encoding.codeScale().fromFull(encoding.encode(encoding.ceiling())))
                    .as(encoding.id())
                    .isCloseTo(clip == null ? 1 : clip, within(1e-9));
            assertThat(encoding.headroomStops())
                    .as(encoding.id())
                    .isCloseTo(Math.log(encoding.ceiling() / 0.18) / Math.log(2), within(1e-12))
                    .isBetween(2.0, 12.0);
        }
    }

    /** Whether two pieces claim the code, or none does, because their constants do not meet. */
    private static boolean isInsideAStep(Encoding encoding, double code) {
        double y = encoding.codeScale().fromFull(code);
        for (int i = 1; i < encoding.pieces().size(); i++) {
            double border = encoding.pieces().get(i - 1).until();
            double below = encoding.pieces().get(i - 1).form().at(border);
            double above = encoding.pieces().get(i).form().at(border);
            if (y > Math.min(below, above) - 1e-9 && y < Math.max(below, above) + 1e-9) {
                return true;
            }
        }
        return false;
    }

    private static double step(Encoding encoding) {
        return PUBLISHED_STEPS.getOrDefault(encoding.id(), ROUNDING);
    }
}
