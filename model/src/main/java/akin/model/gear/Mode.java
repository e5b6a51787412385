package akin.model.gear;

import akin.model.quantity.Area;
import akin.model.quantity.Iso;
import akin.model.quantity.PictureSize;
import akin.model.quantity.Timespan;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One way a body reads its sensor: which part of it, into which picture, at which rates.
 *
 * @param id the word a rig file uses for it
 * @param picture pixels recorded
 * @param area the active area of the sensor, in millimetres
 * @param rates the frame rates it offers
 * @param readout time from the first line to the last; zero for a global shutter
 * @param sampling how photosites become pixels
 * @param profiles ids of the profiles it offers; null when all of the body's
 * @param codecs ids of the codecs it records inside; null when all of the body's, empty when none
 * @param outputs ids of the outputs that carry it; null when all of the body's
 * @param isoFloors lowest usable ISO per profile in this mode, where it differs from the profile's own
 * @param isoBases native ISOs in this mode, where they differ from the profile's own
 * @param crop what choosing this mode changes beside the view, where the maker or a test says so
 */
public record Mode(
        String id,
        @Nullable PictureSize picture,
        @Nullable Area area,
        @Nullable Rates rates,
        @Nullable Timespan readout,
        @Nullable Sampling sampling,
        @Nullable List<String> profiles,
        @Nullable List<String> codecs,
        @Nullable List<String> outputs,
        Map<String, Iso> isoFloors,
        @Nullable List<Iso> isoBases,
        @Nullable String crop,
        @Nullable String source) {}
