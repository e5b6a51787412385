package akin.model.optics;

/**
 * Which of two customary formulas gives the hyperfocal distance. They differ by one focal length, which matters in
 * close-up tables and nowhere else; near and far limits are the same under both.
 */
public enum HyperfocalConvention {
    /** H = f² / (N c): ExifTool's, and that of The Barnet Book of Photography ("Depth"). */
    SIMPLIFIED,
    /** H = f² / (N c) + f: that of the thin lens, as printed on illuma.blogspot.com, 12 March 2014. */
    THIN_LENS
}
