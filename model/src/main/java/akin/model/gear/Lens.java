package akin.model.gear;

import akin.model.quantity.Aperture;
import akin.model.quantity.Length;
import akin.model.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * A lens as its maker describes it.
 *
 * @param id the word a rig file uses for it
 * @param family the series it belongs to; lenses of one series are matched by their maker
 * @param mount id of its mount
 * @param focal shortest focal length
 * @param focalTo longest focal length; null for a prime
 * @param squeeze horizontal squeeze of an anamorphic lens; 1 for a spherical one
 * @param open widest stop, geometric (f)
 * @param openAtLong widest geometric stop at the longest focal length, of a zoom that closes as it zooms
 * @param closed smallest stop, geometric (f)
 * @param openT widest stop, photometric (T)
 * @param closedT smallest stop, photometric (T)
 * @param iris how the iris is set
 * @param circle diameter of the image circle
 * @param closeFocus nearest distance it focuses at, from the image plane
 * @param stabilised whether a group of it moves to steady the picture
 * @param mass its mass
 */
public record Lens(
        String id,
        @Nullable String name,
        @Nullable String maker,
        @Nullable String family,
        @Nullable String mount,
        @Nullable Length focal,
        @Nullable Length focalTo,
        @Nullable Double squeeze,
        @Nullable Aperture open,
        @Nullable Aperture openAtLong,
        @Nullable Aperture closed,
        @Nullable Aperture openT,
        @Nullable Aperture closedT,
        @Nullable Iris iris,
        @Nullable Length circle,
        @Nullable Length closeFocus,
        @Nullable Boolean stabilised,
        @Nullable Mass mass,
        @Nullable String source) {

    /** A lens of which the mass is not known. */
    public Lens(
            String id,
            @Nullable String name,
            @Nullable String maker,
            @Nullable String family,
            @Nullable String mount,
            @Nullable Length focal,
            @Nullable Length focalTo,
            @Nullable Double squeeze,
            @Nullable Aperture open,
            @Nullable Aperture openAtLong,
            @Nullable Aperture closed,
            @Nullable Aperture openT,
            @Nullable Aperture closedT,
            @Nullable Iris iris,
            @Nullable Length circle,
            @Nullable Length closeFocus,
            @Nullable Boolean stabilised,
            @Nullable String source) {
        this(
                id,
                name,
                maker,
                family,
                mount,
                focal,
                focalTo,
                squeeze,
                open,
                openAtLong,
                closed,
                openT,
                closedT,
                iris,
                circle,
                closeFocus,
                stabilised,
                null,
                source);
    }

    /** How an iris is set. */
    public enum Iris {
        /** A ring without clicks: any stop. */
        STEPLESS("stepless"),
        /** Third stops, set from the body. */
        THIRDS("thirds"),
        /** No iris: always open. */
        FIXED("fixed");

        private final String word;

        Iris(String word) {
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

    /** The dotted path of one of its facts. */
    public String path(String key) {
        return "gear.lenses." + id + "." + key;
    }

    /** The name people call it by: its name, or its id where none is given. */
    public String called() {
        return name == null ? id : name;
    }

    /** True when it has one focal length. */
    public boolean prime() {
        return focalTo == null;
    }
}
