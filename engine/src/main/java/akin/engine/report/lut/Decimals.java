package akin.engine.report.lut;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as files hold them: the same digits on every Java, whatever its locale and its shortest form of a double. */
final class Decimals {

    private static final int UNIT = 1_000_000;
    private static final MathContext EIGHT = new MathContext(8, RoundingMode.HALF_EVEN);
    private static final double NOTHING = 1e-12;

    private Decimals() {}

    /** A number of millionths as 0.123456. */
    static void millionths(int value, Appendable out) throws IOException {
        out.append(String.valueOf(value / UNIT)).append('.');
        int rest = value % UNIT;
        for (int digit = UNIT / 10; digit > 0; digit /= 10) {
            out.append((char) ('0' + rest / digit % 10));
        }
    }

    /** A number to eight significant digits, without an exponent. */
    static String eight(double value) {
        if (Math.abs(value) < NOTHING) {
            return "0";
        }
        return plain(new BigDecimal(value).round(EIGHT));
    }

    /** A number to six decimals: what two roundings of one code still share. */
    static String six(double value) {
        return plain(new BigDecimal(value).setScale(6, RoundingMode.HALF_EVEN));
    }

    private static String plain(BigDecimal rounded) {
        BigDecimal stripped = rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros();
        return (stripped.scale() < 0 ? stripped.setScale(0) : stripped).toPlainString();
    }
}
