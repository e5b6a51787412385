package akin.engine.equip;

import akin.engine.read.Binder;
import akin.engine.read.Document;
import akin.model.colour.Chromaticity;
import akin.model.colour.Gamut;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads the data file of gamuts. */
final class Gamuts {

    private static final int VERSION = 1;

    private Gamuts() {}

    /** The file as it is written. */
    record GamutsSheet(
            @JsonProperty(required = true) Integer akinGamuts,
            @JsonProperty(required = true) List<GamutSheet> gamuts) {}

    /** A gamut as it is written. */
    record GamutSheet(
            @JsonProperty(required = true) String id,
            @JsonProperty(required = true) String name,
            @JsonProperty(required = true) PointSheet red,
            @JsonProperty(required = true) PointSheet green,
            @JsonProperty(required = true) PointSheet blue,
            @JsonProperty(required = true) PointSheet white,
            @JsonProperty(required = true) String source) {}

    /** A chromaticity as it is written. */
    record PointSheet(
            @JsonProperty(required = true) Double x,
            @JsonProperty(required = true) Double y) {

        Chromaticity point() {
            return new Chromaticity(x, y);
        }
    }

    /** Every gamut, by id, in the order of the file. */
    static Map<String, Gamut> bind(Binder binder, Document document) {
        GamutsSheet sheet = binder.bind(document, GamutsSheet.class);
        if (sheet.akinGamuts() != VERSION) {
            throw document.error("akin-gamuts", "a file of gamuts starts with akin-gamuts: " + VERSION);
        }
        Map<String, Gamut> gamuts = new LinkedHashMap<>();
        for (GamutSheet g : sheet.gamuts()) {
            gamuts.put(
                    g.id(),
                    new Gamut(
                            g.id(),
                            g.name(),
                            g.red().point(),
                            g.green().point(),
                            g.blue().point(),
                            g.white().point(),
                            g.source()));
        }
        return gamuts;
    }
}
