package akin.model.gear;

import akin.model.quantity.DataRate;
import akin.model.quantity.DataSize;
import org.jspecify.annotations.Nullable;

/**
 * A card or drive that pictures are written to.
 *
 * @param id the word a rig file uses for it
 * @param speedClass the speed class printed on it
 * @param writes sustained write speed, where a test or the maker says more than the class
 * @param capacity how much it holds
 */
public record Media(
        String id,
        @Nullable String name,
        @Nullable String maker,
        @Nullable SpeedClass speedClass,
        @Nullable DataRate writes,
        @Nullable DataSize capacity,
        @Nullable String source) {

    /**
     * Speed classes, by the write speed that they promise at the least, whatever the printed maximum says.
     *
     * <p>SD video speed classes: 6, 10, 30, 60 and 90 MB/s (seen second-hand, gist AriRexouium/64027e01). CFexpress video
     * performance guarantee: 400 MB/s for VPG400 (gigazine.net, 10 July 2024); 200 MB/s for VPG200 (from memory).
     */
    public enum SpeedClass {
        /** 6 MB/s. */
        V6("v6", 6),
        /** 10 MB/s. */
        V10("v10", 10),
        /** 30 MB/s. */
        V30("v30", 30),
        /** 60 MB/s. */
        V60("v60", 60),
        /** 90 MB/s. */
        V90("v90", 90),
        /** 200 MB/s. */
        VPG200("vpg200", 200),
        /** 400 MB/s. */
        VPG400("vpg400", 400);

        private final String word;
        private final int megabytes;

        SpeedClass(String word, int megabytes) {
            this.word = word;
            this.megabytes = megabytes;
        }

        /** Least sustained write speed in bits per second. */
        public double bitsPerSecond() {
            return megabytes * 8e6;
        }

        /** The word used in gear files. */
        @Override
        public String toString() {
            return word;
        }
    }

    /** Sustained write speed in bits per second; null when neither it nor the class is known. */
    public @Nullable Double bitsPerSecond() {
        if (writes != null) {
            return writes.bitsPerSecond();
        }
        return speedClass == null ? null : (Double) speedClass.bitsPerSecond();
    }

    /** The dotted path of one of its facts. */
    public String path(String key) {
        return "gear.media." + id + "." + key;
    }

    /** The name people call it by: its name, or its id where none is given. */
    public String called() {
        return name == null ? id : name;
    }
}
