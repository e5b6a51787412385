package akin.model.tone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class EncodingTest {
    private static final CurveForm LINE = new CurveForm.Linear(1, 0);

    private static Encoding of(Piece... pieces) {
        return new Encoding(
                "x", "X", Encoding.Kind.LOG, List.of(pieces), 1, null, CodeScale.FULL, null, "invented", null);
    }

    private static Encoding scaled(double inputScale, Double referenceWhite, Double clipCode) {
        return new Encoding(
                "x",
                "X",
                Encoding.Kind.LOG,
                List.of(Piece.last(LINE)),
                inputScale,
                referenceWhite,
                CodeScale.FULL,
                clipCode,
                "invented",
                null);
    }

    static Stream<Arguments> refused() {
        return Stream.of(
                Arguments.of("at least one piece", (Supplier<Object>) () -> of()),
                Arguments.of(
                        "last piece must not have an upper bound", (Supplier<Object>) () -> of(new Piece(1, LINE))),
                Arguments.of("piece 1 needs an upper bound", (Supplier<Object>)
                        () -> of(Piece.last(LINE), Piece.last(LINE))),
                Arguments.of("piece 2 ends at 0.5, not after piece 1 at 1.0", (Supplier<Object>)
                        () -> of(new Piece(1, LINE), new Piece(0.5, LINE), Piece.last(LINE))),
                Arguments.of("pieces 1 and 2 do not meet at 0.5: 0.500000 against 1.000000", (Supplier<Object>)
                        () -> of(new Piece(0.5, LINE), Piece.last(new CurveForm.Linear(2, 0)))),
                Arguments.of("piece 1 takes the logarithm of a number that is not positive", (Supplier<Object>)
                        () -> of(Piece.last(new CurveForm.Log(10, 1, 1, 1, 0)))),
                Arguments.of("piece 2 takes the logarithm of a number that is not positive", (Supplier<Object>)
                        () -> of(new Piece(0, LINE), Piece.last(new CurveForm.Log(10, 1, 1, -1, 0)))),
                Arguments.of("curve may not fall", (Supplier<Object>) () -> new CurveForm.Linear(-1, 0)),
                Arguments.of("curve may not fall", (Supplier<Object>) () -> new CurveForm.Log(10, -1, 1, 1, 0)),
                Arguments.of("curve may not fall", (Supplier<Object>) () -> new CurveForm.Power(1, 0, 1, 2, 0)),
                Arguments.of("base must be greater than 1", (Supplier<Object>) () -> new CurveForm.Log(1, 1, 1, 1, 0)),
                Arguments.of("exponent must be", (Supplier<Object>) () -> new CurveForm.Power(1, 1, 0, 0, 0)),
                Arguments.of("peak must be", (Supplier<Object>) () -> new CurveForm.Pq(0)),
                Arguments.of(
                        "slope must be a finite number", (Supplier<Object>) () -> new CurveForm.Linear(Double.NaN, 0)),
                Arguments.of("until must be a number", (Supplier<Object>) () -> new Piece(Double.NaN, LINE)),
                Arguments.of("input scale must be", (Supplier<Object>) () -> scaled(0, null, null)),
                Arguments.of("input scale must be", (Supplier<Object>) () -> scaled(Double.NaN, null, null)),
                Arguments.of("not both", (Supplier<Object>) () -> scaled(2, 203.0, null)),
                Arguments.of("reference white must be", (Supplier<Object>) () -> scaled(1, -1.0, null)),
                Arguments.of("clip code must be", (Supplier<Object>) () -> scaled(1, null, 1.5)),
                Arguments.of("exactly one of linear, log, power and pq, but this one has 0", (Supplier<Object>)
                        () -> Piece.of(null, null, null, null, null)),
                Arguments.of("but this one has 2", (Supplier<Object>)
                        () -> Piece.of(1.0, new CurveForm.Linear(1, 0), null, null, new CurveForm.Pq(1))));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("refused")
    void aBrokenCurveIsRefusedWithTheReason(String reason, Supplier<Object> build) {
        assertThatThrownBy(build::get)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(reason);
    }

    @Test
    void anIdIsTheNameOfAFile() {
        assertThatThrownBy(() -> new Encoding(
                        "S Log",
                        "X",
                        Encoding.Kind.LOG,
                        List.of(Piece.last(LINE)),
                        1,
                        null,
                        CodeScale.FULL,
                        null,
                        "",
                        null))
                .hasMessageContaining("'S Log'");
    }

    @Test
    void atABorderTheNextPieceHoldsAndACodeInsideAStepIsTheBorder() {
        Encoding curve = of(new Piece(0.5, LINE), Piece.last(new CurveForm.Linear(1, 0.0005)));
        assertThat(curve.encode(0.5)).isEqualTo(0.5005);
        assertThat(curve.encode(Math.nextDown(0.5))).isCloseTo(0.5, within(1e-12));
        assertThat(curve.decode(0.5002)).isEqualTo(0.5);
        assertThat(curve.decode(0.4999)).isCloseTo(0.4999, within(1e-12));
        assertThat(curve.decode(0.5006)).isCloseTo(0.5001, within(1e-12));
    }

    @Test
    void aFlatPieceDecodesToItsBrightestLight() {
        Encoding curve = of(new Piece(0, new CurveForm.Linear(0, 0)), Piece.last(LINE));
        assertThat(curve.encode(-3)).isZero();
        assertThat(curve.decode(-0.1)).isZero();
        Encoding root = of(Piece.last(new CurveForm.Power(1, 1, 0.01, 0.5, 0)));
        assertThat(root.encode(-3)).isZero();
        assertThat(root.decode(-0.1)).isEqualTo(-0.01);
    }

    @Test
    void pqLevelsOffAboveItsPeak() {
        CurveForm.Pq pq = new CurveForm.Pq(10_000);
        assertThat(pq.inverse(1)).isCloseTo(10_000, within(1e-6));
        assertThat(pq.inverse(3)).isInfinite();
        assertThat(pq.inverse(-1)).isZero();
    }

    @Test
    void legalScaleIsPlacedBetweenBlackAndNominalPeak() {
        Encoding legal = new Encoding(
                "x", "X", Encoding.Kind.DISPLAY, List.of(Piece.last(LINE)), 1, null, CodeScale.LEGAL, null, "", null);
        assertThat(SignalLevel.code10(legal.encode(0))).isCloseTo(64, within(1e-9));
        assertThat(SignalLevel.code10(legal.encode(1))).isCloseTo(940, within(1e-9));
        assertThat(legal.decode(940.0 / 1023)).isCloseTo(1, within(1e-12));
        assertThat(legal.ceiling()).isCloseTo(1, within(1e-12));
    }

    @Test
    void inputScaleAndReferenceWhiteScaleTheLight() {
        assertThat(scaled(2, null, null).encode(0.18)).isCloseTo(0.36, within(1e-15));
        assertThat(scaled(1, 3.0, null).encode(0.18)).isCloseTo(0.54, within(1e-15));
        assertThat(scaled(2, null, 0.8).ceiling()).isCloseTo(0.4, within(1e-15));
        assertThat(scaled(2, null, null).decode(0.36)).isCloseTo(0.18, within(1e-15));
    }

    // Sony, S-Log2 Technical Paper V1.0: 10-bit levels 64 (0 %), 940 (100 %) and 1023 (109.5 %).
    @Test
    void legalAndFullLevels() {
        assertThat(SignalLevel.fullToLegal(64.0 / 1023)).isCloseTo(0, within(1e-12));
        assertThat(SignalLevel.fullToLegal(940.0 / 1023)).isCloseTo(1, within(1e-12));
        assertThat(100 * SignalLevel.fullToLegal(1)).isCloseTo(109.5, within(0.05));
        assertThat(SignalLevel.legalToFull(SignalLevel.fullToLegal(0.3))).isCloseTo(0.3, within(1e-15));
    }
}
