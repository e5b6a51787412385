package akin.engine.report.picture;

import akin.engine.assess.Numbers;

/** Numbers as they stand in pictures. */
final class Words {

    private Words() {}

    /** With its sign, and the minus as long as the plus. */
    static String signed(double value) {
        String digits = Numbers.spoken(Math.abs(value), "");
        return digits.equals("0") ? digits : (value < 0 ? "−" : "+") + digits;
    }

    /** Stops with their sign, to a tenth. */
    static String stops(double value) {
        return signed(Math.rint(value * 10) / 10);
    }

    /** A distance in metres. */
    static String metres(double millimetres) {
        return Numbers.spoken(millimetres / 1000, "m");
    }
}
