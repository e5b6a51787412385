package akin.engine.assess;

import akin.engine.edit.Splice;
import akin.engine.read.Document;
import akin.engine.read.Place;
import akin.model.finding.Edit;
import akin.model.rig.Rig;
import java.util.List;

/**
 * A rig file that was assessed, with what it was assessed from.
 *
 * @param document the file
 * @param rig what it describes
 * @param assessment what there is to say of it
 * @param ran the checks that ran, in the order of the rule book
 */
public record Checked(Document document, Rig rig, Assessment assessment, List<Check> ran) {

    /** Copies the list. */
    public Checked {
        ran = List.copyOf(ran);
    }

    /**
     * A rule that looked at a unit or a pairing.
     *
     * @param rule id of the rule
     * @param units names of the units it looked at; of a pairing the hero first
     */
    public record Check(String rule, List<String> units) {
        /** Copies the list. */
        public Check {
            units = List.copyOf(units);
        }
    }

    /**
     * A piece of the file that a fix replaces.
     *
     * @param from where it starts
     * @param to where the text behind it starts; equal to {@code from} where something is only put in
     * @param text what stands there afterwards
     */
    public record Replacement(Place from, Place to, String text) {}

    /** The same file with another assessment of it. */
    public Checked with(Assessment other) {
        return new Checked(document, rig, other, ran);
    }

    /** Where the text behind a place starts. */
    public Place behind(Place place) {
        return document.placeAt(place.to());
    }

    /** The place of a setting, or of what is around it when the file does not have it. */
    public Place placeOf(String path) {
        return document.placeOf(path);
    }

    /** What a fix replaces in the file, from its start to its end; together this is exactly what the edits do. */
    public List<Replacement> replacements(Assessment.Remedy fix) {
        List<Edit> edits = fix.edits().stream()
                .map(change -> new Edit(change.path(), change.to()))
                .toList();
        return Splice.of(document, edits).stream()
                .map(splice ->
                        new Replacement(document.placeAt(splice.from()), document.placeAt(splice.to()), splice.text()))
                .toList();
    }
}
