package akin.model.gear;

import akin.model.quantity.FrameRate;

/**
 * Standards of picture connectors, with the bits a second that one link carries.
 *
 * <p>Of the serial digital interfaces it is the nominal rate of the standard, blanking and ancillary data included, which
 * fractional frame rates divide by 1.001: SMPTE ST 292, 372, 424, 2081 and 2082, as listed in the AMD UHD-SDI GT product
 * guide PG380 and in Intel's GTS SDI II user guide. Of HDMI it is what three lanes carry after the line code of 8 bits in
 * 10: 165, 340 and 600 MHz x 3 x 8 bits. Newer signalling of HDMI is left out for want of a source that was seen.
 */
public enum Connector {
    /** ST 292. */
    HD_SDI("hd-sdi", true, 1.485),
    /** ST 372: two links. */
    DUAL_HD_SDI("dual-hd-sdi", true, 2.97),
    /** ST 424. */
    SDI_3G("3g-sdi", true, 2.97),
    /** ST 2081. */
    SDI_6G("6g-sdi", true, 5.94),
    /** ST 2082. */
    SDI_12G("12g-sdi", true, 11.88),
    /** Up to 165 MHz. */
    HDMI_1_2("hdmi-1.2", false, 3.96),
    /** Up to 340 MHz. */
    HDMI_1_4("hdmi-1.4", false, 8.16),
    /** Up to 600 MHz. */
    HDMI_2_0("hdmi-2.0", false, 14.4);

    private static final double FRACTIONAL = 1.001;

    private final String word;
    private final boolean sdi;
    private final double gigabits;

    Connector(String word, boolean sdi, double gigabits) {
        this.word = word;
        this.sdi = sdi;
        this.gigabits = gigabits;
    }

    /** The word used in gear files. */
    public String word() {
        return word;
    }

    /** True when a plug of the one fits the other and a slower signal passes on the faster link. */
    public boolean fits(Connector other) {
        return sdi == other.sdi && (this == DUAL_HD_SDI) == (other == DUAL_HD_SDI);
    }

    /** True of the high-definition multimedia interface. */
    public boolean hdmi() {
        return !sdi;
    }

    /** What it carries at a frame rate, in Gbit/s. */
    public double gigabits(FrameRate rate) {
        return sdi && rate.fraction().getDenominator().intValue() == 1001 ? gigabits / FRACTIONAL : gigabits;
    }

    @Override
    public String toString() {
        return word;
    }
}
