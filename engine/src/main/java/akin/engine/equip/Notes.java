package akin.engine.equip;

import akin.engine.read.Document;
import akin.engine.read.Node;
import akin.engine.read.Say;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What a reader of a report must know of the data behind it: where packs or the rig file itself speak for others. */
public final class Notes {

    private static final String FOLDER = "akin.d/";

    private Notes() {}

    /**
     * One line for each entry or fact that this rig uses and that stands in the place of another, with both places; and one
     * for each file of rules that lies among the data.
     */
    public static List<String> of(Document document, Rig rig, Catalogue catalogue) {
        List<String> notes = new ArrayList<>();
        String beside = document.file().substring(0, document.file().lastIndexOf('/') + 1);
        if (!catalogue.changes().isEmpty()) {
            Set<String> used = used(rig);
            for (Catalogue.Change change : catalogue.changes()) {
                if (used.contains(change.entry())) {
                    notes.add(line(change, beside));
                }
            }
        }
        for (String rules : catalogue.unloadedRules()) {
            notes.add(near(rules, beside) + " is not loaded: a folder of gear is data, and rules in it never run");
        }
        if (document.at("gear").orElse(null) instanceof Node.Fields gear) {
            gear.fields().forEach((kind, field) -> {
                if (Catalogue.KINDS.contains(kind) && field.value() instanceof Node.Fields entries) {
                    entries.fields()
                            .forEach((id, entry) -> catalogue
                                    .entry(kind, id)
                                    .ifPresent(other -> notes.add(kind + "." + Say.clean(id) + ": "
                                            + near(Entry.at(document, entry.key()), beside) + " goes before "
                                            + near(other.where(), beside))));
                }
            });
        }
        return List.copyOf(notes);
    }

    private static String line(Catalogue.Change change, String beside) {
        String where = near(change.where(), beside);
        if (change.fact().isEmpty()) {
            return change.entry() + ": " + where + " overrides " + near(change.before(), beside);
        }
        return change.entry() + "." + change.fact() + ": " + where
                + (change.before().isEmpty() ? " adds it" : " amends " + near(change.before(), beside));
    }

    /** What lies beside the rig file is named as from there, so that a report is the same wherever it is made. */
    private static String near(String where, String beside) {
        return where.startsWith(beside + FOLDER) ? where.substring(beside.length()) : where;
    }

    /** Kind and id of every entry that a rig uses. */
    private static Set<String> used(Rig rig) {
        Set<String> used = new HashSet<>();
        used.add("tolerances." + rig.match().tolerances().profile());
        Optional.ofNullable(rig.production().delivery())
                .ifPresent(delivery -> used.add("encodings." + delivery.encoding()));
        for (Unit unit : rig.units()) {
            used.add("bodies." + unit.body().id());
            used.add("mounts." + unit.body().mount());
            Optional.ofNullable(unit.encoding()).ifPresent(encoding -> used.add("encodings." + encoding.id()));
            Optional.ofNullable(unit.gamut()).ifPresent(gamut -> used.add("gamuts." + gamut.id()));
            Optional.ofNullable(unit.recording().recorder())
                    .ifPresent(recorder -> used.add("recorders." + recorder.id()));
            Optional.ofNullable(unit.media())
                    .ifPresent(media -> used.add("media." + media.media().id()));
            Optional.ofNullable(unit.lens()).ifPresent(fitted -> {
                used.add("lenses." + fitted.lens().id());
                used.add("mounts." + fitted.lens().mount());
                Optional.ofNullable(fitted.adapter()).ifPresent(adapter -> used.add("adapters." + adapter.id()));
            });
        }
        Optional.ofNullable(rig.kit().lenses())
                .ifPresent(lenses -> lenses.forEach(lens -> used.add("lenses." + lens.id())));
        Optional.ofNullable(rig.kit().adapters())
                .ifPresent(adapters -> adapters.forEach(adapter -> used.add("adapters." + adapter.id())));
        return used;
    }
}
