package akin.model.gear;

/** An exposure aid on a body or a recorder, and the scale it shows. */
public enum Aid {
    /** Waveform in per cent of the legal range. */
    WAVEFORM("waveform"),
    /** Spot or cursor meter in per cent of the legal range. */
    SPOT("spot"),
    /** Adjustable zebra in per cent of the legal range. */
    ZEBRA("zebra"),
    /** False colour keyed to levels or to stops over grey. */
    FALSE_COLOUR("false-colour"),
    /** Ten-bit code values of the full range. */
    CODE_VALUES("code-values"),
    /** A histogram without numbers. */
    HISTOGRAM("histogram"),
    /** A light meter's plus-minus scale in stops. */
    METER("meter");

    private final String word;

    Aid(String word) {
        this.word = word;
    }

    /** The word used in gear files. */
    public String word() {
        return word;
    }

    @Override
    public String toString() {
        return word;
    }
}
