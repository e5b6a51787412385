package akin.model.gear;

import akin.model.quantity.PictureSize;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A picture input of a recorder.
 *
 * @param id the word a rig file uses for it
 * @param connector standard of its connector
 * @param kinds whether it takes raw values, a developed picture or both
 * @param bits most bits a sample
 * @param chroma richest chroma sampling of a developed picture
 * @param picture largest picture
 * @param trigger true when it takes record start and stop from the body
 */
public record Input(
        String id,
        @Nullable Connector connector,
        @Nullable List<Codec.Kind> kinds,
        @Nullable Integer bits,
        @Nullable String chroma,
        @Nullable PictureSize picture,
        @Nullable Boolean trigger,
        @Nullable String source) {}
