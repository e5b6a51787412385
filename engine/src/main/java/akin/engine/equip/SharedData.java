package akin.engine.equip;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/** The data files that are packaged with Akin. */
final class SharedData {

    private static final String ROOT = "/akin/shared/";
    private static final String YAML = ".yaml";

    /** More than there are files; names that a rig file invents are not kept for ever. */
    private static final int MOST_KEPT = 500;

    private final Map<String, Optional<String>> texts = new ConcurrentHashMap<>();

    /** The text of a data file, by its name under {@code shared/}; empty when there is none. */
    Optional<String> text(String name) {
        Optional<String> kept = texts.get(name);
        if (kept == null) {
            kept = read(name);
            if (texts.size() >= MOST_KEPT) {
                texts.clear();
            }
            texts.put(name, kept);
        }
        return kept;
    }

    private static Optional<String> read(String name) {
        try (InputStream in = SharedData.class.getResourceAsStream(ROOT + name)) {
            return in == null ? Optional.empty() : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The names of the data files in a folder, without their ending, sorted. Only needed to suggest a word. */
    List<String> names(String folder) {
        URL url = SharedData.class.getResource(ROOT + folder);
        if (url == null) {
            return List.of();
        }
        try {
            if (url.openConnection() instanceof JarURLConnection jar) {
                String prefix = jar.getEntryName().endsWith("/") ? jar.getEntryName() : jar.getEntryName() + "/";
                return names(jar.getJarFile().stream()
                        .map(java.util.zip.ZipEntry::getName)
                        .filter(name -> name.startsWith(prefix))
                        .map(name -> name.substring(prefix.length())));
            }
            try (Stream<Path> files = Files.list(Path.of(url.toURI()))) {
                return names(files.map(file -> file.getFileName().toString()));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    private static List<String> names(Stream<String> files) {
        return files.filter(name -> name.endsWith(YAML) && !name.contains("/"))
                .map(name -> name.substring(0, name.length() - YAML.length()))
                .sorted()
                .toList();
    }
}
