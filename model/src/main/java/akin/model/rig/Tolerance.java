package akin.model.rig;

/** The limits that rules read. Rules carry no numbers of their own; a tolerance profile gives every one of these. */
public enum Tolerance {
    /** Exposure times apart, in per cent of the shorter. */
    BLUR("blur", "%"),
    /** Horizontal image widths at the subject apart. */
    VIEW("view", "%"),
    /** Entrance pupils apart, 2 log2 of their ratio. */
    DEPTH("depth", "stops"),
    /** Light recorded apart. */
    EXPOSURE("exposure", "stops"),
    /** Stops over middle grey apart. */
    HEADROOM("headroom", "stops"),
    /** Stops over middle grey that must hold texture: white paper is 2.3 over grey, some more for what shines on it. */
    HIGHLIGHTS("highlights", "stops"),
    /** Stops by which a darker recording may be pushed before that shows in noise and shadows, whatever the bits. */
    PUSH("push", "stops"),
    /** White balances apart. */
    WHITE("white", "mired"),
    /** White balance off by so much that a recording with its white burned in is not corrected without a visible cost. */
    WHITE_FAR("white-far", "mired"),
    /** Rolling-shutter read-out times apart. */
    READOUT("readout", "ms"),
    /** Picture shapes apart, as the part of the width or height lost to the common extraction. */
    SHAPE("shape", "%"),
    /** Smallest shutter angle that needs no reason. */
    HALF_TURN_FROM("half-turn-from", "°"),
    /** Largest shutter angle that needs no reason. */
    HALF_TURN_TO("half-turn-to", "°"),
    /** Frame-to-frame change of exposure by pulsing light that is not seen. */
    FLICKER_RIPPLE("flicker-ripple", "%"),
    /** Part of a screen in shot that may be shown once too often or too seldom in one exposure. */
    SCREEN_BAR("screen-bar", "%"),
    /** Frames by which the picture on the way to a recorder may come later than sound and timecode. */
    LINK_DELAY("link-delay", "frames"),
    /** Part of a battery's energy that is not planned to be used. */
    BATTERY_SPARE("battery-spare", "%"),
    /** Part of a support's rating that is not planned to be used. */
    PAYLOAD_SPARE("payload-spare", "%"),
    /** Airy disk in photosites at which diffraction softens the picture. */
    DIFFRACTION("diffraction", "photosites"),
    /** Neutral density from which infra-red pollution shows without an infra-red cut. */
    INFRARED_ND("infrared-nd", "density"),
    /** Filters stacked in front of one lens before reflections and vignetting are to be expected. */
    ND_STACK("nd-stack", "filters"),
    /** Light that may be lost between geometric and photometric stop before a guess of one for the other misleads. */
    F_FOR_T("f-for-t", "stops"),
    /** Light that a prime is taken to lose at most between geometric and photometric stop when nothing is known of it. */
    PRIME_LOSS("prime-loss", "stops"),
    /** Light that a zoom is taken to lose at most between geometric and photometric stop when nothing is known of it. */
    ZOOM_LOSS("zoom-loss", "stops"),
    /** Light level from a native ISO that needs no remark. */
    ISO_OFF_BASE("iso-off-base", "stops"),
    /** Part of the delivery width by which pixels may fall short. */
    DETAIL("detail", "%"),
    /** Time that an object takes to cross the picture in a pan at 24 frames a second, below which the pan judders. */
    PAN_CROSSING("pan-crossing", "s"),
    /** Compression ratios of recordings apart, in per cent of the lesser. */
    COMPRESSION("compression", "%"),
    /** Write speed that media must have to spare over the data rate. */
    MEDIA_SPEED("media-speed", "%"),
    /** Capacity that media must have to spare over what is planned. */
    MEDIA_CAPACITY("media-capacity", "%"),
    /** Timecodes apart by the time that clocks are set to each other again. */
    TIMECODE_DRIFT("timecode-drift", "frames"),
    /** Average frame rate of a shot clip away from the rate that its frames are stamped for. */
    RATE_WANDER("rate-wander", "%"),
    /** Frames by which the picture of a shot clip may be shorter than its sound. */
    SOUND_TAIL("sound-tail", "frames"),
    /** Lengths of two clips of one take apart. */
    TAKE_LENGTH("take-length", "s"),
    /** Middle grey as read of test shots, apart. */
    PROOF_GREY("proof-grey", "stops"),
    /** Tint of neutral patches as read of test shots, apart: distance across the daylight locus in CIE 1960 u, v. */
    PROOF_TINT("proof-tint", "duv"),
    /** Stops that a white patch must stay under the level at which highlights clip. */
    PROOF_ROOM("proof-room", "stops"),
    /** Stops over or under middle grey that a unit may hold less than planned, as read of test shots. */
    PROOF_RANGE("proof-range", "stops"),
    /** Patches of a chart as read of test shots apart, CIEDE2000 on average. */
    PROOF_COLOUR("proof-colour", "");

    private static final double MOST_KEPT = 99;

    private final String key;
    private final String unit;

    Tolerance(String key, String unit) {
        this.key = key;
        this.unit = unit;
    }

    /** The word used in tolerance profiles and rig files. */
    public String key() {
        return key;
    }

    /** The unit that the limit is in. */
    public String unit() {
        return unit;
    }

    /** The largest limit that means anything: a part that is kept of something is less than all of it. */
    public double most() {
        return this == BATTERY_SPARE || this == PAYLOAD_SPARE ? MOST_KEPT : Double.MAX_VALUE;
    }
}
