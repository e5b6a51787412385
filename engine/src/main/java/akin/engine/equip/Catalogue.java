package akin.engine.equip;

import akin.engine.read.BadInput;
import akin.engine.read.Binder;
import akin.engine.read.Document;
import akin.engine.read.GearSheet;
import akin.engine.read.YamlReader;
import akin.model.colour.Gamut;
import akin.model.gear.Adapter;
import akin.model.gear.Body;
import akin.model.gear.Lens;
import akin.model.gear.Media;
import akin.model.gear.Mount;
import akin.model.gear.Recorder;
import akin.model.tone.Encoding;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * The gear, encodings and tolerance profiles that words in a rig file are looked up in. Built-in entries are read one by
 * one when asked for, so that a rig of two units does not pay for the whole catalogue.
 */
public final class Catalogue {

    private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
    private static final String GEAR = "gear/";
    private static final String GAMUTS = "gamuts.yaml";
    private static final String MOUNTS = "gear/mounts.yaml";

    private final Binder binder;
    private final SharedData data;
    private final Kept kept;
    private final List<GearSheet> own;

    private Catalogue(Binder binder, SharedData data, Kept kept, List<GearSheet> own) {
        this.binder = binder;
        this.data = data;
        this.kept = kept;
        this.own = List.copyOf(own);
    }

    /** The catalogue that comes with Akin. */
    public static Catalogue builtIn(Binder binder) {
        return new Catalogue(binder, new SharedData(), Kept.nothing(), List.of());
    }

    /** This catalogue, with gear that a rig file brings itself in front. */
    public Catalogue with(GearSheet gear) {
        List<GearSheet> more = new java.util.ArrayList<>();
        more.add(gear);
        more.addAll(own);
        return new Catalogue(binder, data, kept, more);
    }

    /** The body of this id. */
    public Optional<Body> body(String id) {
        return gear("bodies", id, GearSheet::bodies);
    }

    /** The lens of this id. */
    public Optional<Lens> lens(String id) {
        return gear("lenses", id, GearSheet::lenses);
    }

    /** The recorder of this id. */
    public Optional<Recorder> recorder(String id) {
        return gear("recorders", id, GearSheet::recorders);
    }

    /** The card or drive of this id. */
    public Optional<Media> media(String id) {
        return gear("media", id, GearSheet::media);
    }

    /** The adapter of this id. */
    public Optional<Adapter> adapter(String id) {
        return gear("adapters", id, GearSheet::adapters);
    }

    /** Every mount, by id. */
    public Map<String, Mount> mounts() {
        Map<String, Mount> all = new java.util.HashMap<>();
        packaged(MOUNTS).ifPresent(sheet -> all.putAll(sheet.mounts()));
        for (int i = own.size() - 1; i >= 0; i--) {
            all.putAll(own.get(i).mounts());
        }
        return all;
    }

    /** The encoding of this id. */
    public Optional<Encoding> encoding(String id) {
        return kept.encodings()
                .computeIfAbsent(
                        id, word -> read("encodings", word).map(document -> Encodings.bind(binder, document, word)));
    }

    /** Every gamut, by id. */
    public Map<String, Gamut> gamuts() {
        return kept.gamuts()
                .computeIfAbsent(
                        GAMUTS,
                        name -> data.text(name)
                                .map(text -> Gamuts.bind(binder, YamlReader.read(name, text)))
                                .orElseThrow(() -> new IllegalStateException("the file of gamuts is not packaged")));
    }

    /** The tolerance profile of this name. */
    public Optional<Document> tolerances(String profile) {
        return read("tolerances", profile);
    }

    /** The ids there are of a kind of gear ({@code bodies}, {@code lenses} ...), or of {@code encodings}, sorted. */
    public List<String> ids(String kind) {
        TreeSet<String> ids =
                new TreeSet<>(data.names(kind.equals("encodings") || kind.equals("tolerances") ? kind : GEAR + kind));
        for (GearSheet sheet : own) {
            switch (kind) {
                case "bodies" -> ids.addAll(sheet.bodies().keySet());
                case "lenses" -> ids.addAll(sheet.lenses().keySet());
                case "recorders" -> ids.addAll(sheet.recorders().keySet());
                case "media" -> ids.addAll(sheet.media().keySet());
                case "adapters" -> ids.addAll(sheet.adapters().keySet());
                default -> {}
            }
        }
        return List.copyOf(ids);
    }

    private <T> Optional<T> gear(String kind, String id, Function<GearSheet, Map<String, T>> ofKind) {
        for (GearSheet sheet : own) {
            T found = ofKind.apply(sheet).get(id);
            if (found != null) {
                return Optional.of(found);
            }
        }
        if (!ID.matcher(id).matches()) {
            return Optional.empty();
        }
        String name = GEAR + kind + "/" + id + ".yaml";
        return packaged(name).map(sheet -> {
            T found = ofKind.apply(sheet).get(id);
            if (found == null) {
                throw new BadInput(name, "the file's name says " + id + ", but nothing in it is called that");
            }
            return found;
        });
    }

    private Optional<GearSheet> packaged(String name) {
        return kept.sheets()
                .computeIfAbsent(
                        name, file -> data.text(file).map(text -> GearSheet.read(YamlReader.read(file, text), binder)));
    }

    private Optional<Document> read(String folder, String id) {
        if (!ID.matcher(id).matches()) {
            return Optional.empty();
        }
        String name = folder + "/" + id + ".yaml";
        return kept.documents().computeIfAbsent(name, file -> data.text(file).map(text -> YamlReader.read(file, text)));
    }
}
