package akin.model.tone;

/** What a curve's value 0 to 1 stands for in code values. */
public enum CodeScale {
    /** 0 is code 0 and 1 is the highest code, 1023 in 10 bit. Most published camera curves are given so. */
    FULL {
        @Override
        public double toFull(double value) {
            return value;
        }

        @Override
        public double fromFull(double share) {
            return share;
        }
    },
    /** 0 is video black and 1 is nominal peak: codes 64 and 940 in 10 bit (Rec. ITU-R BT.709, BT.2020, BT.2100). */
    LEGAL {
        @Override
        public double toFull(double value) {
            return SignalLevel.legalToFull(value);
        }

        @Override
        public double fromFull(double share) {
            return SignalLevel.fullToLegal(share);
        }
    };

    /** The share of the full code range for a value on this scale. */
    public abstract double toFull(double value);

    /** The value on this scale for a share of the full code range. */
    public abstract double fromFull(double share);
}
