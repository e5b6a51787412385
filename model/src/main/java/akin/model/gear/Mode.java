package akin.model.gear;

import akin.model.optics.Diffraction;
import akin.model.quantity.Area;
import akin.model.quantity.CropFactor;
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
 * @param cropFactor how much smaller the active area is than the 36 mm x 24 mm frame, where a body states that instead
 *     of millimetres
 * @param photosites photosites read across and down the active area, where they are not the pixels of the picture
 * @param rates the frame rates it offers
 * @param readout time from the first line to the last; zero for a global shutter
 * @param sampling how photosites become pixels
 * @param profiles ids of the profiles it offers; null when all of the body's
 * @param codecs ids of the codecs it records inside; null when all of the body's, empty when none
 * @param outputs ids of the outputs that carry it; null when all of the body's
 * @param isoFloors lowest usable ISO per profile in this mode, where it differs from the profile's own
 * @param isoBases native ISOs in this mode, where they differ from the profile's own
 * @param heatLimit how long it records before heat ends it, at 25 degrees Celsius in the shade
 * @param crop what choosing this mode changes beside the view, where the maker or a test says so
 */
public record Mode(
        String id,
        @Nullable PictureSize picture,
        @Nullable Area area,
        @Nullable CropFactor cropFactor,
        @Nullable PictureSize photosites,
        @Nullable Rates rates,
        @Nullable Timespan readout,
        @Nullable Sampling sampling,
        @Nullable List<String> profiles,
        @Nullable List<String> codecs,
        @Nullable List<String> outputs,
        Map<String, Iso> isoFloors,
        @Nullable List<Iso> isoBases,
        @Nullable TimeLimit heatLimit,
        @Nullable String crop,
        @Nullable String source) {

    /** The active area as given, or from the crop factor and the shape of the picture; null when neither is known. */
    public @Nullable Area activeArea() {
        if (area != null || cropFactor == null || picture == null) {
            return area;
        }
        return cropFactor.area(picture.aspect());
    }

    /** Distance from one photosite to the next in micrometres; null when the photosites are not known. */
    public @Nullable Double photositePitch() {
        Area active = activeArea();
        PictureSize sites = photosites == null && sampling == Sampling.ONE_TO_ONE ? picture : photosites;
        return active == null || sites == null
                ? null
                : (Double) Diffraction.photositePitchMicrometres(active.widthMm(), sites.width());
    }
}
