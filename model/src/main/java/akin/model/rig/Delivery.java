package akin.model.rig;

import akin.model.quantity.FrameRate;
import akin.model.quantity.PictureSize;
import org.jspecify.annotations.Nullable;

/**
 * What the production is delivered as.
 *
 * @param picture pixels delivered
 * @param rate frame rate delivered; null when it is the production's own
 * @param encoding id of the encoding it is viewed in
 */
public record Delivery(
        @Nullable PictureSize picture,
        @Nullable FrameRate rate,
        @Nullable String encoding) {}
