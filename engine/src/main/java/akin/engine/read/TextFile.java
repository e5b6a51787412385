package akin.engine.read;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Reads the text of a file that a person named, within bounds and with plain words for what may be wrong with it. */
public final class TextFile {

    /** Larger than any rig or gear file is, in bytes. */
    public static final int LARGEST = 1_000_000;

    /** How many names of a folder are looked at for one that may have been meant. */
    private static final int MOST_NAMES = 1_000;

    private TextFile() {}

    /**
     * The text of a UTF-8 file.
     *
     * @param path the file
     * @param name how it was named, for messages
     * @throws BadInput when it cannot be read as text
     */
    public static String read(Path path, String name) {
        return read(path, name, "a rig or gear file");
    }

    /**
     * The text of a UTF-8 file.
     *
     * @param path the file
     * @param name how it was named, for messages
     * @param kind what it is meant to be, in words
     * @throws BadInput when it cannot be read as text
     */
    public static String read(Path path, String name, String kind) {
        if (Files.isDirectory(path)) {
            throw new BadInput(name, "this is a folder; name a rig file");
        }
        refusePipes(path, name);
        byte[] bytes;
        try (InputStream in = Files.newInputStream(path)) {
            bytes = in.readNBytes(LARGEST + 1);
        } catch (NoSuchFileException e) {
            throw new BadInput(
                    name, "there is no such file." + Say.nearest(name, besides(path, name, List.of(".yaml", ".yml"))));
        } catch (AccessDeniedException e) {
            throw new BadInput(name, "this file may not be read");
        } catch (IOException e) {
            throw new BadInput(name, "this file cannot be read");
        }
        if (bytes.length > LARGEST) {
            throw new BadInput(name, "larger than the " + LARGEST / 1_000_000 + " MB " + kind + " may have");
        }
        return decode(bytes, name);
    }

    /**
     * Refuses what is no file that can be opened and read to its end.
     *
     * @param path the file
     * @param name how it was named, for messages
     * @throws BadInput when there is no such file, or it is a pipe or a device
     */
    public static void requireFile(Path path, String name) {
        if (!Files.exists(path)) {
            throw new BadInput(name, "there is no such file." + Say.nearest(name, besides(path, name, List.of())));
        }
        refusePipes(path, name);
    }

    private static void refusePipes(Path path, String name) {
        if (Files.exists(path) && !Files.isDirectory(path) && !Files.isRegularFile(path)) {
            // Opening a pipe that nobody writes to would wait for ever, and Java cannot ask first.
            throw new BadInput(name, "this is a pipe or a device; save what it gives as a file, and name that");
        }
    }

    /** The files with one of these endings, if any is asked for, in the folder where a file was looked for, named as it was. */
    private static List<String> besides(Path path, String name, List<String> endings) {
        Path folder = path.toAbsolutePath().getParent();
        String file = String.valueOf(path.getFileName());
        if (folder == null || !name.endsWith(file)) {
            return List.of();
        }
        String before = name.substring(0, name.length() - file.length());
        try (Stream<Path> files = Files.list(folder)) {
            return files.limit(MOST_NAMES)
                    .map(other -> String.valueOf(other.getFileName()))
                    .filter(other -> endings.isEmpty() || endings.stream().anyMatch(other::endsWith))
                    .map(other -> before + other)
                    .sorted()
                    .toList();
        } catch (IOException | UncheckedIOException e) {
            return List.of();
        }
    }

    private static String decode(byte[] bytes, String name) {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        try {
            String text = decoder.decode(in).toString();
            int nul = text.indexOf('\0');
            if (nul >= 0) {
                throw new BadInput(
                        name,
                        Place.of(text, text.codePointCount(0, nul)),
                        "a zero byte stands here; is this a text file?");
            }
            return text;
        } catch (CharacterCodingException e) {
            String before = new String(bytes, 0, in.position(), StandardCharsets.UTF_8);
            throw new BadInput(
                    name,
                    Place.of(before, before.codePointCount(0, before.length())),
                    "not UTF-8 from here on; is this a text file?");
        }
    }
}
