package akin.engine.equip;

import akin.engine.read.BadInput;
import akin.engine.read.GearSheet;
import akin.engine.read.Place;
import akin.engine.read.Say;
import akin.model.gear.Body;
import akin.model.gear.Lens;
import akin.model.gear.Mode;
import akin.model.gear.Mount;
import akin.model.optics.CropReference;
import akin.model.quantity.Aperture;
import akin.model.quantity.CropFactor;
import akin.model.quantity.Length;
import akin.model.quantity.QuantityException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.stream.Location;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Reads the open lensfun database (CC BY-SA 3.0) where it is installed, as gear. Nothing of it comes with Akin.
 *
 * <p>A camera gives a body with its mount and one mode, {@code frame}, with the crop factor by the diagonal: the database
 * knows nothing of video modes, and not the shape of the picture. A lens gives a lens for each of its mounts, with its focal
 * range and widest stop where the entry says them or its name does ({@code 24-70mm f/4}). Everything else is not known, and
 * is unchecked.
 *
 * <p>An id is the maker and the model: accents dropped, in small letters, everything but letters a-z and digits a hyphen, a
 * {@code +} the word {@code plus}; the maker is not said twice. Behind it comes a camera's variant, and the mount of a lens
 * that has several or is built onto its camera (by the database's custom, its mount begins with a small letter). Entries that then still share an id and say the same are one; otherwise the later ones, in the order of
 * file names and lines, get -2, -3 and so on.
 */
public final class Lensfun {

    /** Where Debian's package liblensfun-data-v1 puts it. */
    public static final String INSTALLED = "/usr/share/lensfun";

    /** The one mode of each body. */
    public static final String MODE = "frame";

    private static final String SOURCE = "lensfun database (CC BY-SA 3.0)";
    private static final String ROOT = "lensdatabase";
    private static final String NUMBER = "([0-9]+(?:\\.[0-9]+)?)";
    private static final Pattern FOCAL_IN_NAME =
            Pattern.compile("(?<![0-9.])" + NUMBER + "(?:\\s*-\\s*" + NUMBER + ")?\\s*mm", Pattern.CASE_INSENSITIVE);
    private static final Pattern STOP_IN_NAME = Pattern.compile(
            "(?:\\bf/?|(?<![0-9])1:)" + NUMBER + "(?:\\s*-\\s*" + NUMBER + ")?", Pattern.CASE_INSENSITIVE);
    /** A name with a smaller focal length in millimetres, or stop, means something else. */
    private static final double LEAST_NAMED = 0.7;
    /** A name with a higher f number means something else. */
    private static final double SMALLEST_NAMED = 32;

    private static final Pattern MARKS = Pattern.compile("\\p{M}+");
    private static final Pattern OTHER = Pattern.compile("[^a-z0-9]+");

    private final Map<String, Body> bodies = new LinkedHashMap<>();
    private final Map<String, Lens> lenses = new LinkedHashMap<>();
    private final Map<String, Mount> mounts = new HashMap<>();
    private int cameraEntries;
    private int lensEntries;

    private Lensfun() {}

    /**
     * What was read.
     *
     * @param gear bodies, lenses and mounts
     * @param cameras how many cameras the files hold; some are one body
     * @param lenses how many lenses the files hold, one with several mounts counted once
     */
    public record Read(GearSheet gear, int cameras, int lenses) {}

    /**
     * Reads every XML file in a folder and below it.
     *
     * @throws BadInput when there is none, or at the first thing in one that cannot be read
     */
    public static Read read(Path folder) {
        List<Path> files;
        try (Stream<Path> all = Files.walk(folder)) {
            files = all.filter(file -> file.toString().endsWith(".xml"))
                    .filter(Files::isRegularFile)
                    .sorted()
                    .toList();
        } catch (IOException | java.io.UncheckedIOException e) {
            throw new BadInput(
                    folder.toString(),
                    "there is no lensfun database here; Debian's package liblensfun-data-v1 puts it into " + INSTALLED);
        }
        if (files.isEmpty()) {
            throw new BadInput(folder.toString(), "no file of the lensfun database, named *.xml, is in this folder");
        }
        Lensfun database = new Lensfun();
        for (Path file : files) {
            database.file(file);
        }
        return new Read(
                new GearSheet(
                        GearSheet.VERSION,
                        SOURCE,
                        null,
                        null,
                        database.bodies,
                        database.lenses,
                        Map.of(),
                        Map.of(),
                        Map.of(),
                        database.mounts,
                        Map.of()),
                database.cameraEntries,
                database.lensEntries);
    }

    private void file(Path path) {
        // No document type, no entity and nothing outside the file is ever looked at.
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, true);
        try (InputStream in = Files.newInputStream(path)) {
            XMLStreamReader xml = factory.createXMLStreamReader(in);
            for (int event = xml.next(); event != XMLStreamConstants.START_ELEMENT; event = xml.next()) {
                // What stands before the root, a document type among it, is passed over.
            }
            if (!xml.getLocalName().equals(ROOT)) {
                throw new BadInput(
                        path.toString(),
                        place(xml.getLocation()),
                        "read the element " + Say.quote(xml.getLocalName()) + "; a file of the lensfun database is a "
                                + ROOT);
            }
            Entry root = new Entry(path.toString(), xml, 0);
            for (Entry entry : root.children) {
                switch (entry.name) {
                    case "camera" -> camera(entry);
                    case "lens" -> lens(entry);
                    case "mount" -> entry.text("name").ifPresent(this::mount);
                    default -> {}
                }
            }
        } catch (XMLStreamException e) {
            Location at = e.getLocation();
            throw at == null || at.getLineNumber() < 1
                    ? new BadInput(path.toString(), "this is not well-formed XML")
                    : new BadInput(path.toString(), place(at), "this is not well-formed XML");
        } catch (IOException e) {
            throw new BadInput(path.toString(), "this file cannot be read");
        }
    }

    private static Place place(Location at) {
        int from = Math.max(0, at.getCharacterOffset());
        return new Place(Math.max(1, at.getLineNumber()), Math.max(1, at.getColumnNumber()), from, from);
    }

    private void camera(Entry entry) {
        cameraEntries++;
        String maker = entry.need("maker");
        String model = entry.need("model");
        CropFactor crop = entry.quantity(
                "cropfactor",
                entry.number("cropfactor", entry.need("cropfactor")),
                n -> new CropFactor(n, CropReference.DIAGONAL));
        Mode mode = new Mode(
                MODE, null, null, crop, null, null, null, null, null, null, null, Map.of(), null, null, null, SOURCE);
        String variant = entry.text("variant").orElse("");
        String mount = mount(entry.need("mount"));
        put(
                bodies,
                id(maker, model + " " + variant),
                id -> new Body(
                        id,
                        called(maker, model, variant),
                        maker,
                        mount,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        Map.of(MODE, mode),
                        Map.of(),
                        Map.of(),
                        Map.of(),
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        SOURCE));
    }

    private void lens(Entry entry) {
        lensEntries++;
        String maker = entry.text("maker").orElse("");
        String model = entry.need("model");
        Span focal = entry.span("focal").or(() -> inName(FOCAL_IN_NAME, model)).orElse(null);
        Length shortest = focal == null ? null : entry.quantity("focal", focal.from, Length::new);
        Length longest =
                focal == null || focal.to <= focal.from ? null : entry.quantity("focal", focal.to, Length::new);
        // A name gives the widest stop at either end of a zoom, an element that at the short end and the smallest.
        Optional<Span> named = inName(STOP_IN_NAME, model).filter(stop -> stop.to <= SMALLEST_NAMED);
        Optional<Span> said = entry.span("aperture");
        Aperture open = named.or(() -> said.filter(stop -> longest == null))
                .map(stop -> stop(entry, stop.from))
                .orElse(null);
        Aperture openAtLong = named.filter(stop -> longest != null && stop.to > stop.from)
                .map(stop -> stop(entry, stop.to))
                .orElse(null);
        Aperture closed = said.filter(stop -> stop.to > stop.from)
                .map(stop -> stop(entry, stop.to))
                .orElse(null);
        // Other projections bend what lies at the edge: their angle of view is not that of a focal length.
        Double squeeze = entry.text("type").orElse("rectilinear").equals("rectilinear") ? 1.0 : null;
        List<String> on = entry.texts("mount");
        for (String mount : on.isEmpty() ? List.of("") : on) {
            put(
                    lenses,
                    id(maker, model + (on.size() > 1 || builtOn(mount) ? " " + mount : "")),
                    id -> new Lens(
                            id,
                            called(maker, model, ""),
                            maker.isEmpty() ? null : maker,
                            null,
                            mount.isEmpty() ? null : mount(mount),
                            shortest,
                            longest,
                            squeeze,
                            open,
                            openAtLong,
                            closed,
                            null,
                            null,
                            null,
                            null,
                            null,
                            null,
                            SOURCE));
        }
    }

    /** By the database's own custom the mount of a lens that is built onto its camera begins with a small letter. */
    private static boolean builtOn(String mount) {
        return !mount.isEmpty() && Character.isLowerCase(mount.charAt(0));
    }

    private static Aperture stop(Entry entry, double number) {
        return entry.quantity("aperture", number, n -> new Aperture(n, Aperture.Kind.GEOMETRIC));
    }

    /** What a name says; nothing where it makes no sense, since a name may mean something else. */
    private static Optional<Span> inName(Pattern pattern, String model) {
        return pattern.matcher(model)
                .results()
                .map(found -> {
                    double from = Double.parseDouble(found.group(1));
                    return new Span(from, found.group(2) == null ? from : Double.parseDouble(found.group(2)));
                })
                .filter(span -> span.from >= LEAST_NAMED && span.to >= span.from)
                .findFirst();
    }

    /** Puts an entry under its id, or the next free number behind it; one that says the same is there already. */
    private static <T> void put(Map<String, T> in, String id, Function<String, T> make) {
        String free = id;
        for (int number = 2; in.containsKey(free); number++) {
            if (Objects.equals(in.get(free), make.apply(free))) {
                return;
            }
            free = id + "-" + number;
        }
        in.put(free, make.apply(free));
    }

    private String mount(String name) {
        String id = word(name);
        mounts.putIfAbsent(id, new Mount(id, name, null, SOURCE));
        return id;
    }

    private static String called(String maker, String model, String variant) {
        String whole =
                model.toLowerCase(Locale.ROOT).startsWith(maker.toLowerCase(Locale.ROOT)) ? model : maker + " " + model;
        return variant.isEmpty() ? whole : whole + " (" + variant + ")";
    }

    /** The id of a maker's model, by the rule above. */
    static String id(String maker, String model) {
        String ofMaker = word(maker);
        String ofModel = word(model);
        boolean said = ofMaker.isEmpty() || ofModel.equals(ofMaker) || ofModel.startsWith(ofMaker + "-");
        return said ? ofModel : ofMaker + "-" + ofModel;
    }

    private static String word(String text) {
        String plain = MARKS.matcher(Normalizer.normalize(text, Normalizer.Form.NFKD))
                .replaceAll("")
                .toLowerCase(Locale.ROOT)
                .replace("+", " plus ");
        String word = OTHER.matcher(plain).replaceAll("-");
        int from = word.startsWith("-") ? 1 : 0;
        int to = word.endsWith("-") && word.length() > 1 ? word.length() - 1 : word.length();
        String id = word.substring(from, Math.max(from, to));
        return id.isEmpty() ? "x" : id;
    }

    /** From one number to another that is the same or larger. */
    private record Span(double from, double to) {}

    /** An element with what stands in it. */
    private static final class Entry {
        private static final int DEEPEST = 20;

        private final String file;
        private final String name;
        private final Place place;
        private final Map<String, String> attributes = new HashMap<>();
        private final List<Entry> children = new ArrayList<>();
        private final String text;

        Entry(String file, XMLStreamReader xml, int depth) throws XMLStreamException {
            this.file = file;
            this.name = xml.getLocalName();
            this.place = place(xml.getLocation());
            if (depth > DEEPEST) {
                throw new BadInput(file, place, "elements stand in each other more than " + DEEPEST + " deep");
            }
            for (int i = 0; i < xml.getAttributeCount(); i++) {
                attributes.put(xml.getAttributeLocalName(i), xml.getAttributeValue(i));
            }
            StringBuilder words = new StringBuilder();
            for (int event = xml.next(); event != XMLStreamConstants.END_ELEMENT; event = xml.next()) {
                if (event == XMLStreamConstants.START_ELEMENT) {
                    children.add(new Entry(file, xml, depth + 1));
                } else if (event == XMLStreamConstants.CHARACTERS) {
                    words.append(xml.getText());
                } else if (event == XMLStreamConstants.ENTITY_REFERENCE) {
                    throw new BadInput(
                            file,
                            place(xml.getLocation()),
                            "read the entity " + Say.quote(xml.getLocalName()) + "; entities are not looked up");
                }
            }
            this.text = words.toString().strip();
        }

        /** Texts of the elements of this name, the English one first, without empty ones. */
        List<String> texts(String of) {
            return children.stream()
                    .filter(child -> child.name.equals(of) && !child.text.isEmpty())
                    .sorted(Comparator.comparing((Entry child) -> !"en".equals(child.attributes.get("lang"))))
                    .map(child -> child.text)
                    .toList();
        }

        Optional<String> text(String of) {
            return texts(of).stream().findFirst();
        }

        String need(String of) {
            return text(of).orElseThrow(() -> new BadInput(
                    file, place, "this " + name + " has no " + of + ", which each has in the lensfun database"));
        }

        /** The numbers of an element, which has {@code value}, or {@code min} and {@code max}. */
        Optional<Span> span(String of) {
            return children.stream()
                    .filter(child -> child.name.equals(of))
                    .findFirst()
                    .flatMap(child -> {
                        String value = child.attributes.get("value");
                        String min = value == null ? child.attributes.get("min") : value;
                        String max = value == null ? child.attributes.getOrDefault("max", min) : value;
                        return min == null || max == null
                                ? Optional.empty()
                                : Optional.of(new Span(number(of, min), number(of, max)));
                    });
        }

        private double number(String of, String written) {
            try {
                return Double.parseDouble(written);
            } catch (NumberFormatException e) {
                throw wrong(of, written);
            }
        }

        <T> T quantity(String of, double number, DoubleFunction<T> make) {
            try {
                return make.apply(number);
            } catch (QuantityException e) {
                throw wrong(of, Double.toString(number));
            }
        }

        private BadInput wrong(String of, String read) {
            Place at = children.stream()
                    .filter(child -> child.name.equals(of))
                    .map(child -> child.place)
                    .findFirst()
                    .orElse(place);
            return new BadInput(
                    file,
                    at,
                    "the " + of + " of this " + name + " reads " + Say.quote(read)
                            + "; it is a number within what is possible");
        }
    }
}
