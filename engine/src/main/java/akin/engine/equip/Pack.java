package akin.engine.equip;

import akin.engine.read.BadInput;
import akin.engine.read.Binder;
import akin.engine.read.Document;
import akin.engine.read.GearSheet;
import akin.engine.read.Node;
import akin.engine.read.Place;
import akin.engine.read.Say;
import akin.engine.read.TextFile;
import akin.engine.read.YamlReader;
import akin.model.gear.Adapter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A folder of data that joins the catalogue: gear, encodings, gamuts, tolerance profiles. Its first line says what a file
 * holds, whatever the file is called. A pack is data and nothing else: rules that lie in it are never loaded.
 */
public final class Pack {

    /** Deeper and larger than anybody keeps data by hand; what a folder named by mistake may cost. */
    private static final int DEEPEST = 8;

    private static final int MOST_FILES = 10_000;

    private static final String RULES = ".drl";
    private static final String OVERRIDES = "overrides";
    private static final String AMENDS = "amends";
    private static final List<String> HEADERS = List.of("akin-gear", "akin-encoding", "akin-gamuts", "akin-tolerance");
    private static final Set<String> TOLERANCE_KEYS = Set.of("akin-tolerance", Node.SOURCE, OVERRIDES, "limits");

    /**
     * An entry and what its file says of an earlier one of that name.
     *
     * @param overrides true when it goes in its place
     * @param amends true when its facts are laid over the other's
     */
    record Claim(Entry entry, boolean overrides, boolean amends) {}

    private final String name;
    private final Binder binder;
    private final Map<String, Claim> claims = new java.util.TreeMap<>();
    private final List<String> rules = new ArrayList<>();
    private int files;

    private Pack(String name, Binder binder) {
        this.name = name;
        this.binder = binder;
    }

    /**
     * Reads a folder.
     *
     * @param name how it was named, for messages
     * @throws BadInput when it is no folder, or at the first thing in it that is wrong
     */
    public static Pack read(String name, Path folder, Binder binder) {
        Pack pack = new Pack(name, binder);
        for (Path file : files(name, folder)) {
            String relative = folder.relativize(file).toString().replace('\\', '/');
            String called = name.endsWith("/") ? name + relative : name + "/" + relative;
            if (relative.endsWith(RULES)) {
                pack.rules.add(called);
            } else if (yaml(file)) {
                pack.files++;
                pack.file(YamlReader.read(called, TextFile.read(file, called)), relative);
            }
        }
        return pack;
    }

    /**
     * The YAML files of a folder and of the folders in it, in the order of their names; hidden ones are left out.
     *
     * @param name how it was named, for messages
     * @throws BadInput when it is no folder
     */
    public static List<Path> gearFiles(String name, Path folder) {
        return files(name, folder).stream().filter(Pack::yaml).toList();
    }

    private static boolean yaml(Path file) {
        String name = file.toString();
        return name.endsWith(".yaml") || name.endsWith(".yml");
    }

    private static List<Path> files(String name, Path folder) {
        if (!Files.isDirectory(folder)) {
            throw new BadInput(
                    name,
                    Files.exists(folder)
                            ? "this is a file; name the folder of gear files that it lies in"
                            : "there is no folder of gear files here");
        }
        List<Path> found = new ArrayList<>();
        try (Stream<Path> all =
                Files.find(folder, DEEPEST, (path, attributes) -> !attributes.isDirectory() && !hidden(folder, path))) {
            for (Path file : (Iterable<Path>) all::iterator) {
                found.add(file);
                if (found.size() > MOST_FILES) {
                    throw new BadInput(name, "more than the " + MOST_FILES + " files a folder of gear files may have");
                }
            }
        } catch (IOException | UncheckedIOException e) {
            throw new BadInput(name, "this folder cannot be read");
        }
        found.sort(java.util.Comparator.comparing(
                file -> folder.relativize(file).toString().replace('\\', '/')));
        return found;
    }

    private static boolean hidden(Path folder, Path path) {
        for (Path step : folder.relativize(path)) {
            if (step.toString().startsWith(".")) {
                return true;
            }
        }
        return false;
    }

    /** How the folder was named. */
    public String name() {
        return name;
    }

    /** How many data files were read. */
    public int files() {
        return files;
    }

    /** Files of rules that lie in the folder and are not loaded, in order. */
    public List<String> rules() {
        return List.copyOf(rules);
    }

    /** What it holds, by kind and id. */
    Map<String, Claim> claims() {
        return claims;
    }

    private void file(Document document, String relative) {
        if (!(document.root() instanceof Node.Fields fields)) {
            throw new BadInput(document.file(), document.root().place(), header());
        }
        List<String> said =
                HEADERS.stream().filter(fields.fields()::containsKey).toList();
        if (said.size() != 1) {
            String first = fields.fields().isEmpty()
                    ? ""
                    : fields.fields().keySet().iterator().next();
            Place place = document.keyOf(said.size() > 1 ? said.get(1) : first)
                    .orElse(document.root().place());
            throw new BadInput(document.file(), place, header() + Say.nearest(first, HEADERS));
        }
        switch (said.get(0)) {
            case "akin-gear" -> gear(document);
            case "akin-encoding" -> encoding(document);
            case "akin-gamuts" -> gamuts(document);
            default -> tolerance(document, relative);
        }
    }

    private static String header() {
        return "a file of gear or other data starts with one of akin-gear: 1, akin-encoding: 1, akin-gamuts: 1,"
                + " akin-tolerance: 1.";
    }

    private void gear(Document document) {
        GearSheet sheet = GearSheet.read(document, binder);
        Set<String> ids = new HashSet<>();
        Map<String, Map<String, ?>> kinds = kinds(sheet);
        Set<String> overrides = declared(document, OVERRIDES, sheet.overrides());
        Set<String> amends = declared(document, AMENDS, sheet.amends());
        amends.stream().filter(overrides::contains).findFirst().ifPresent(both -> {
            throw new BadInput(
                    document.file(),
                    document.keyOf(AMENDS).orElseThrow(),
                    Say.quote(both) + " stands under overrides too; it either goes in the place of the other, or amends"
                            + " it");
        });
        kinds.forEach((kind, entries) -> entries.forEach((id, value) -> {
            ids.add(id);
            String path = kind + "." + id;
            claim(
                    new Entry(kind, id, document, path, document.at(path).orElseThrow(), value, null),
                    overrides.contains(id),
                    amends.contains(id));
        }));
        requireThere(document, OVERRIDES, sheet.overrides(), ids);
        requireThere(document, AMENDS, sheet.amends(), ids);
    }

    /** The entries of a sheet by kind. */
    static Map<String, Map<String, ?>> kinds(GearSheet sheet) {
        Map<String, Map<String, ?>> kinds = new java.util.LinkedHashMap<>();
        kinds.put("bodies", sheet.bodies());
        kinds.put("lenses", sheet.lenses());
        kinds.put("recorders", sheet.recorders());
        kinds.put("media", sheet.media());
        kinds.put("adapters", sheet.adapters());
        kinds.put("mounts", sheet.mounts());
        kinds.put("formats", sheet.formats());
        return kinds;
    }

    private void encoding(Document document) {
        Encodings.EncodingSheet sheet = Encodings.sheet(binder, document);
        one(document, "encodings", sheet.id(), "", Encodings.encoding(document, sheet), sheet.overrides());
    }

    private void gamuts(Document document) {
        Gamuts.GamutsSheet sheet = Gamuts.sheet(binder, document);
        Set<String> overrides = declared(document, OVERRIDES, sheet.overrides());
        Set<String> ids = new HashSet<>();
        Map<String, akin.model.colour.Gamut> gamuts = Gamuts.gamuts(document, sheet);
        for (int i = 0; i < sheet.gamuts().size(); i++) {
            String id = sheet.gamuts().get(i).id();
            if (!ids.add(id)) {
                throw document.error("gamuts." + i + ".id", "the gamut " + Say.quote(id) + " stands here again");
            }
            String path = "gamuts." + i;
            Object value = java.util.Objects.requireNonNull(gamuts.get(id));
            claim(
                    new Entry("gamuts", id, document, path, document.at(path).orElseThrow(), value, null),
                    overrides.contains(id),
                    false);
        }
        requireThere(document, OVERRIDES, sheet.overrides(), ids);
    }

    private void tolerance(Document document, String relative) {
        ((Node.Fields) document.root()).fields().forEach((key, field) -> {
            if (!TOLERANCE_KEYS.contains(key)) {
                throw new BadInput(
                        document.file(),
                        field.key(),
                        "the key " + Say.quote(key) + " is not known here." + Say.nearest(key, TOLERANCE_KEYS)
                                + " Allowed: "
                                + Say.list(TOLERANCE_KEYS.stream().sorted().toList()));
            }
        });
        if (!(document.at("akin-tolerance").orElse(null) instanceof Node.Scalar version
                && version.text().equals("1"))) {
            throw document.error("akin-tolerance", "a tolerance profile starts with akin-tolerance: 1");
        }
        String id = relative.substring(relative.lastIndexOf('/') + 1).replaceAll("\\.ya?ml$", "");
        ToleranceReader.limits(document);
        List<String> overrides =
                document.at(OVERRIDES).map(node -> words(document, node)).orElse(null);
        one(document, "tolerances", id, "", document, overrides);
    }

    private static List<String> words(Document document, Node node) {
        if (!(node.bare() instanceof Node.Items items)) {
            throw document.error(OVERRIDES, "a list, such as [one, another], belongs here");
        }
        List<String> words = new ArrayList<>();
        for (Node item : items.items()) {
            if (!(item instanceof Node.Scalar word)) {
                throw document.error(OVERRIDES + "." + words.size(), "a single value belongs here");
            }
            words.add(word.text());
        }
        return words;
    }

    private void one(
            Document document, String kind, String id, String path, Object value, @Nullable List<String> overrides) {
        claim(
                new Entry(kind, id, document, path, document.root(), value, null),
                declared(document, OVERRIDES, overrides).contains(id),
                false);
        requireThere(document, OVERRIDES, overrides, Set.of(id));
    }

    private void claim(Entry entry, boolean overrides, boolean amends) {
        if (!Catalogue.ID.matcher(entry.id()).matches()) {
            throw new BadInput(
                    entry.document().file(),
                    entry.place(),
                    "read the id " + Say.quote(entry.id())
                            + "; an id is small letters and digits, with single dashes between");
        }
        Claim twin = claims.put(entry.name(), new Claim(entry, overrides, amends));
        if (twin != null) {
            throw new BadInput(
                    entry.document().file(),
                    entry.place(),
                    entry.name() + " stands in this folder twice; the other is "
                            + twin.entry().where() + ". Take one out");
        }
    }

    private static Set<String> declared(Document document, String key, @Nullable List<String> ids) {
        Set<String> declared = new HashSet<>();
        if (ids != null) {
            for (int i = 0; i < ids.size(); i++) {
                if (!declared.add(ids.get(i))) {
                    throw document.error(key + "." + i, Say.quote(ids.get(i)) + " stands here twice");
                }
            }
        }
        return declared;
    }

    private static void requireThere(Document document, String key, @Nullable List<String> ids, Set<String> there) {
        if (ids != null) {
            for (int i = 0; i < ids.size(); i++) {
                if (!there.contains(ids.get(i))) {
                    List<String> words = there.stream().sorted().toList();
                    throw document.error(
                            key + "." + i,
                            "nothing in this file is called " + Say.quote(ids.get(i)) + "."
                                    + Say.nearest(ids.get(i), words) + " In it: "
                                    + (words.isEmpty() ? "nothing" : Say.list(words)));
                }
            }
        }
    }

    /**
     * Says what words of its bodies, profiles and lenses nothing answers to: a mount, an encoding, a profile of a mode.
     *
     * @param whole the catalogue that the pack has joined
     * @throws BadInput at the first such word
     */
    public void requireWords(Catalogue whole) {
        for (Claim claim : claims.values()) {
            Entry entry = whole.entry(claim.entry().kind(), claim.entry().id()).orElseThrow();
            if (entry.value() instanceof akin.model.gear.Body body) {
                word(entry, "mount", body.mount(), whole.mounts().keySet());
                body.modes().forEach((id, mode) -> {
                    words(
                            entry,
                            "modes." + id + ".profiles",
                            mode.profiles(),
                            body.profiles().keySet());
                    words(
                            entry,
                            "modes." + id + ".codecs",
                            mode.codecs(),
                            body.codecs().keySet());
                    words(
                            entry,
                            "modes." + id + ".outputs",
                            mode.outputs(),
                            body.outputs().keySet());
                    mode.isoFloors()
                            .keySet()
                            .forEach(profile -> word(
                                    entry,
                                    "modes." + id + ".iso-floors." + profile,
                                    profile,
                                    body.profiles().keySet()));
                });
                body.profiles().forEach((id, profile) -> {
                    word(entry, "profiles." + id + ".encoding", profile.encoding(), whole.ids("encodings"));
                    word(
                            entry,
                            "profiles." + id + ".gamut",
                            profile.gamut(),
                            whole.gamuts().keySet());
                });
                body.outputs().forEach((id, output) -> {
                    word(entry, "outputs." + id + ".encoding", output.encoding(), whole.ids("encodings"));
                    word(
                            entry,
                            "outputs." + id + ".gamut",
                            output.gamut(),
                            whole.gamuts().keySet());
                });
            } else if (entry.value() instanceof akin.model.gear.Lens lens) {
                word(entry, "mount", lens.mount(), whole.mounts().keySet());
            } else if (entry.value() instanceof Adapter adapter) {
                word(entry, "lens-mount", adapter.lensMount(), whole.mounts().keySet());
                word(entry, "body-mount", adapter.bodyMount(), whole.mounts().keySet());
            }
        }
    }

    private static void words(
            Entry entry, String path, @Nullable List<String> words, java.util.Collection<String> allowed) {
        if (words != null) {
            for (int i = 0; i < words.size(); i++) {
                word(entry, path + "." + i, words.get(i), allowed);
            }
        }
    }

    private static void word(Entry entry, String path, @Nullable String word, java.util.Collection<String> allowed) {
        if (word != null && !allowed.contains(word)) {
            List<String> sorted = allowed.stream().sorted().toList();
            throw entry.document()
                    .error(
                            entry.path() + "." + path,
                            "nothing is called " + Say.quote(word) + " here." + Say.nearest(word, sorted) + " Allowed: "
                                    + (sorted.isEmpty() ? "none" : Say.list(sorted)));
        }
    }

    /** The entries of this folder by kind and id, for those who look at it by itself. */
    public Map<String, Entry> entries() {
        Map<String, Entry> entries = new HashMap<>();
        claims.forEach((key, claim) -> entries.put(key, claim.entry()));
        return entries;
    }
}
