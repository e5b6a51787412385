package akin.engine.equip;

import akin.engine.read.Binder;
import akin.engine.read.Document;
import akin.engine.read.Say;
import akin.model.colour.Chromaticity;
import akin.model.colour.Gamut;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads the data file of gamuts. */
final class Gamuts {

    private static final int VERSION = 1;

    private Gamuts() {}

    /** The file as it is written. */
    record GamutsSheet(
            @JsonProperty(required = true) Integer akinGamuts,
            @Nullable List<String> overrides,
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
        return gamuts(document, sheet(binder, document));
    }

    /** The file as it is written. */
    static GamutsSheet sheet(Binder binder, Document document) {
        GamutsSheet sheet = binder.bind(document, GamutsSheet.class);
        if (sheet.akinGamuts() != VERSION) {
            throw document.error("akin-gamuts", "a file of gamuts starts with akin-gamuts: " + VERSION);
        }
        return sheet;
    }

    /** The gamuts that a file gives, by id, in its order. */
    static Map<String, Gamut> gamuts(Document document, GamutsSheet sheet) {
        Map<String, Gamut> gamuts = new LinkedHashMap<>();
        for (int i = 0; i < sheet.gamuts().size(); i++) {
            GamutSheet g = sheet.gamuts().get(i);
            try {
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
            } catch (IllegalArgumentException e) {
                throw document.error("gamuts." + i, Say.of(e));
            }
        }
        return gamuts;
    }
}
