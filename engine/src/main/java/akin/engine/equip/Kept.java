package akin.engine.equip;

import akin.engine.read.Document;
import akin.engine.read.GearSheet;
import akin.model.colour.Gamut;
import akin.model.tone.Encoding;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What has been read of the packaged data, so that a catalogue that lives longer than one check reads each file once. It
 * never goes stale: packaged data does not change while Akin runs.
 *
 * @param sheets gear files by name
 * @param encodings encodings by id
 * @param documents other data files by name
 * @param gamuts the one file of gamuts, by its name
 */
record Kept(
        Map<String, Optional<GearSheet>> sheets,
        Map<String, Optional<Encoding>> encodings,
        Map<String, Optional<Document>> documents,
        Map<String, Map<String, Gamut>> gamuts) {

    static Kept nothing() {
        return new Kept(
                new ConcurrentHashMap<>(),
                new ConcurrentHashMap<>(),
                new ConcurrentHashMap<>(),
                new ConcurrentHashMap<>());
    }
}
