package akin.engine.equip;

import akin.engine.read.BadInput;
import akin.engine.read.Binder;
import akin.engine.read.Document;
import akin.engine.read.GearSheet;
import akin.engine.read.Node;
import akin.engine.read.YamlReader;
import akin.model.colour.Gamut;
import akin.model.gear.Adapter;
import akin.model.gear.Body;
import akin.model.gear.Lens;
import akin.model.gear.Media;
import akin.model.gear.Mount;
import akin.model.gear.Recorder;
import akin.model.tone.Encoding;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * The gear, encodings and tolerance profiles that words in a rig file are looked up in. Built-in entries are read one by
 * one when asked for, so that a rig of two units does not pay for the whole catalogue.
 */
public final class Catalogue {

    /** How an id is written. */
    static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

    private static final String GEAR = "gear/";
    private static final String GAMUTS = "gamuts.yaml";
    private static final String YAML = ".yaml";
    private static final Set<String> ONE_FILE = Set.of("mounts", "formats");

    /** The kinds of entries there are, in the order one lists them. */
    public static final List<String> KINDS = List.of(
            "bodies",
            "lenses",
            "recorders",
            "media",
            "adapters",
            "mounts",
            "formats",
            "encodings",
            "gamuts",
            "tolerances");

    private static final String MOUNTS = GEAR + "mounts" + YAML;

    private final Binder binder;
    private final SharedData data;
    private final Kept kept;
    private final List<GearSheet> own;
    private final Packed packed;

    private Catalogue(Binder binder, SharedData data, Kept kept, List<GearSheet> own, Packed packed) {
        this.binder = binder;
        this.data = data;
        this.kept = kept;
        this.own = List.copyOf(own);
        this.packed = packed;
    }

    /**
     * What packs have brought.
     *
     * @param entries their entries by kind and id, the last one where several packs have it
     * @param changes what they say otherwise than the catalogue, or than each other, did
     * @param rules files of rules that lie in them and are not loaded
     */
    private record Packed(Map<String, Entry> entries, List<Change> changes, List<String> rules) {
        private static final Packed NOTHING = new Packed(Map.of(), List.of(), List.of());
    }

    /**
     * One thing that a pack says otherwise than before.
     *
     * @param entry kind and id of the entry
     * @param fact dotted path of the fact below it; empty when the whole entry goes in the place of the other
     * @param where file, line and column of what holds now
     * @param before file, line and column of what held before; empty when nothing did
     */
    public record Change(String entry, String fact, String where, String before) {}

    /** The catalogue that comes with Akin. */
    public static Catalogue builtIn(Binder binder) {
        return new Catalogue(binder, new SharedData(), Kept.nothing(), List.of(), Packed.NOTHING);
    }

    /** This catalogue, with gear that a rig file brings itself in front. */
    public Catalogue with(GearSheet gear) {
        List<GearSheet> more = new ArrayList<>();
        more.add(gear);
        more.addAll(own);
        return new Catalogue(binder, data, kept, more, packed);
    }

    /**
     * This catalogue, with a pack in front.
     *
     * @throws BadInput when the pack has an entry of a name that is there already and does not say what is to become of
     *     that one, or says it of a name that is not there
     */
    public Catalogue with(Pack pack) {
        Map<String, Entry> entries = new HashMap<>(packed.entries());
        List<Change> changes = new ArrayList<>(packed.changes());
        pack.claims().values().forEach(claim -> {
            Entry entry = claim.entry();
            Optional<Entry> before = entry(entry.kind(), entry.id());
            requireDeclared(claim, before);
            entries.put(entry.name(), before.isEmpty() || !claim.amends() ? entry : amended(entry, before.get()));
            before.ifPresent(old -> {
                if (claim.overrides()) {
                    changes.add(new Change(entry.name(), "", entry.where(), old.where()));
                } else {
                    Map<String, Entry.Fact> facts = old.facts();
                    entry.written()
                            .forEach((path, fact) -> changes.add(new Change(
                                    entry.name(),
                                    path,
                                    fact.where(),
                                    facts.containsKey(path) ? facts.get(path).where() : "")));
                }
            });
        });
        List<String> rules = new ArrayList<>(packed.rules());
        rules.addAll(pack.rules());
        return new Catalogue(
                binder, data, kept, own, new Packed(Map.copyOf(entries), List.copyOf(changes), List.copyOf(rules)));
    }

    private static void requireDeclared(Pack.Claim claim, Optional<Entry> before) {
        Entry entry = claim.entry();
        boolean declared = claim.overrides() || claim.amends();
        if (before.isPresent() && !declared) {
            boolean gear = entry.document().at("akin-gear").isPresent();
            throw new BadInput(
                    entry.document().file(),
                    entry.place(),
                    entry.name() + " stands in " + before.get().where() + " already; to put this in its place, say"
                            + " overrides: [" + entry.id() + "] at the top of this file"
                            + (gear ? ", or amends: [" + entry.id() + "] to lay these facts over that one's" : ""));
        }
        if (before.isEmpty() && declared) {
            String key = claim.overrides() ? "overrides" : "amends";
            throw new BadInput(
                    entry.document().file(),
                    entry.place(),
                    "this is to " + (claim.overrides() ? "override" : "amend") + " " + entry.name()
                            + ", but there is nothing of that name; take it out of " + key + ", or name what is meant");
        }
    }

    private Entry amended(Entry over, Entry under) {
        Node laid = Entry.laid(over.node(), under.node());
        Node sheet =
                within("akin-gear", new Node.Scalar("1", true, over.place()), over.kind(), within(over.id(), laid));
        GearSheet read = binder.bind(over.document(), sheet, "", GearSheet.class);
        Object value = java.util.Objects.requireNonNull(
                Pack.kinds(read).getOrDefault(over.kind(), Map.of()).get(over.id()));
        return new Entry(over.kind(), over.id(), over.document(), over.path(), laid, value, under);
    }

    private static Node within(String key, Node value) {
        return new Node.Fields(Map.of(key, new Node.Field(value.place(), value)), false, value.place());
    }

    private static Node within(String first, Node one, String second, Node other) {
        Map<String, Node.Field> fields = new java.util.LinkedHashMap<>();
        fields.put(first, new Node.Field(one.place(), one));
        fields.put(second, new Node.Field(other.place(), other));
        return new Node.Fields(fields, false, one.place());
    }

    /** What packs say otherwise than the catalogue did, in the order in which they joined it. */
    public List<Change> changes() {
        return packed.changes();
    }

    /** Files of rules that lie in packs and are not loaded. */
    public List<String> unloadedRules() {
        return packed.rules();
    }

    /**
     * The entry of a kind and id, of the packs or the catalogue that comes with Akin.
     *
     * @param kind {@code bodies}, {@code lenses} ... or {@code encodings}, {@code gamuts}, {@code tolerances}
     */
    public Optional<Entry> entry(String kind, String id) {
        Entry entry = packed.entries().get(kind + "." + id);
        return entry == null ? builtInEntry(kind, id) : Optional.of(entry);
    }

    /** True when a pack has brought the entry. */
    public boolean brought(Entry entry) {
        return packed.entries().containsKey(entry.name());
    }

    private Optional<Entry> builtInEntry(String kind, String id) {
        if (!ID.matcher(id).matches()) {
            return Optional.empty();
        }
        switch (kind) {
            case "encodings" -> {
                String name = "encodings/" + id + YAML;
                return data.text(name).map(text -> {
                    Document document = YamlReader.read(name, text);
                    return new Entry(
                            kind, id, document, "", document.root(), Encodings.bind(binder, document, id), null);
                });
            }
            case "tolerances" -> {
                return read("tolerances", id)
                        .map(document -> new Entry(kind, id, document, "", document.root(), document, null));
            }
            case "gamuts" -> {
                Document document = YamlReader.read(GAMUTS, data.text(GAMUTS).orElseThrow());
                List<String> ids = List.copyOf(Gamuts.bind(binder, document).keySet());
                String path = "gamuts." + ids.indexOf(id);
                return document.at(path)
                        .map(node -> new Entry(
                                kind,
                                id,
                                document,
                                path,
                                node,
                                java.util.Objects.requireNonNull(gamuts().get(id)),
                                null));
            }
            default -> {
                String name = GEAR + (ONE_FILE.contains(kind) ? kind : kind + "/" + id) + YAML;
                return data.text(name).flatMap(text -> {
                    Document document = YamlReader.read(name, text);
                    Object value = Pack.kinds(GearSheet.read(document, binder))
                            .getOrDefault(kind, Map.of())
                            .get(id);
                    String path = kind + "." + id;
                    return value == null
                            ? Optional.empty()
                            : document.at(path).map(node -> new Entry(kind, id, document, path, node, value, null));
                });
            }
        }
    }

    /** The body of this id. */
    public Optional<Body> body(String id) {
        return gear("bodies", id, Body.class, GearSheet::bodies);
    }

    /** The lens of this id. */
    public Optional<Lens> lens(String id) {
        return gear("lenses", id, Lens.class, GearSheet::lenses);
    }

    /** The recorder of this id. */
    public Optional<Recorder> recorder(String id) {
        return gear("recorders", id, Recorder.class, GearSheet::recorders);
    }

    /** The card or drive of this id. */
    public Optional<Media> media(String id) {
        return gear("media", id, Media.class, GearSheet::media);
    }

    /** The adapter of this id. */
    public Optional<Adapter> adapter(String id) {
        return gear("adapters", id, Adapter.class, GearSheet::adapters);
    }

    /** Every mount, by id. */
    public Map<String, Mount> mounts() {
        Map<String, Mount> all = new HashMap<>();
        packaged(MOUNTS).ifPresent(sheet -> all.putAll(sheet.mounts()));
        packed("mounts", Mount.class).forEach(all::put);
        for (int i = own.size() - 1; i >= 0; i--) {
            all.putAll(own.get(i).mounts());
        }
        return all;
    }

    /** The encoding of this id. */
    public Optional<Encoding> encoding(String id) {
        Entry entry = packed.entries().get("encodings." + id);
        if (entry != null) {
            return Optional.of((Encoding) entry.value());
        }
        return kept.encodings()
                .computeIfAbsent(
                        id, word -> read("encodings", word).map(document -> Encodings.bind(binder, document, word)));
    }

    /** Every gamut, by id. */
    public Map<String, Gamut> gamuts() {
        Map<String, Gamut> more = packed("gamuts", Gamut.class);
        if (more.isEmpty()) {
            return packagedGamuts();
        }
        Map<String, Gamut> all = new java.util.LinkedHashMap<>(packagedGamuts());
        all.putAll(more);
        return all;
    }

    private Map<String, Gamut> packagedGamuts() {
        return kept.gamuts()
                .computeIfAbsent(
                        GAMUTS,
                        name -> data.text(name)
                                .map(text -> Gamuts.bind(binder, YamlReader.read(name, text)))
                                .orElseThrow(() -> new IllegalStateException("the file of gamuts is not packaged")));
    }

    /** The tolerance profile of this name. */
    public Optional<Document> tolerances(String profile) {
        Entry entry = packed.entries().get("tolerances." + profile);
        if (entry != null) {
            return Optional.of(entry.document());
        }
        return read("tolerances", profile);
    }

    /** The ids there are of a kind, of {@link #KINDS}, sorted. */
    public List<String> ids(String kind) {
        TreeSet<String> ids = new TreeSet<>();
        switch (kind) {
            case "encodings", "tolerances" -> ids.addAll(data.names(kind));
            case "gamuts" -> ids.addAll(packagedGamuts().keySet());
            case "mounts", "formats" ->
                packaged(GEAR + kind + YAML)
                        .ifPresent(sheet -> ids.addAll(
                                Pack.kinds(sheet).getOrDefault(kind, Map.of()).keySet()));
            default -> ids.addAll(data.names(GEAR + kind));
        }
        packed.entries().values().stream()
                .filter(entry -> entry.kind().equals(kind))
                .forEach(entry -> ids.add(entry.id()));
        for (GearSheet sheet : own) {
            ids.addAll(Pack.kinds(sheet).getOrDefault(kind, Map.of()).keySet());
        }
        return List.copyOf(ids);
    }

    private <T> Map<String, T> packed(String kind, Class<T> type) {
        Map<String, T> found = new java.util.TreeMap<>();
        packed.entries().values().stream()
                .filter(entry -> entry.kind().equals(kind))
                .forEach(entry -> found.put(entry.id(), type.cast(entry.value())));
        return found;
    }

    private <T> Optional<T> gear(String kind, String id, Class<T> type, Function<GearSheet, Map<String, T>> ofKind) {
        for (GearSheet sheet : own) {
            T found = ofKind.apply(sheet).get(id);
            if (found != null) {
                return Optional.of(found);
            }
        }
        Entry entry = packed.entries().get(kind + "." + id);
        if (entry != null) {
            return Optional.of(type.cast(entry.value()));
        }
        if (!ID.matcher(id).matches()) {
            return Optional.empty();
        }
        String name = GEAR + kind + "/" + id + YAML;
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
        String name = folder + "/" + id + YAML;
        return kept.documents().computeIfAbsent(name, file -> data.text(file).map(text -> YamlReader.read(file, text)));
    }
}
