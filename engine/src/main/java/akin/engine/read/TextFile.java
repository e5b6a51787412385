package akin.engine.read;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Reads the text of a file that a person named, within bounds and with plain words for what may be wrong with it. */
public final class TextFile {

    /** Larger than any rig or gear file is, in bytes. */
    public static final int LARGEST = 1_000_000;

    private TextFile() {}

    /**
     * The text of a UTF-8 file.
     *
     * @param path the file
     * @param name how it was named, for messages
     * @throws BadInput when it cannot be read as text
     */
    public static String read(Path path, String name) {
        if (Files.isDirectory(path)) {
            throw new BadInput(name, "this is a folder; name a rig file");
        }
        byte[] bytes;
        try (InputStream in = Files.newInputStream(path)) {
            bytes = in.readNBytes(LARGEST + 1);
        } catch (NoSuchFileException e) {
            throw new BadInput(name, "there is no such file");
        } catch (AccessDeniedException e) {
            throw new BadInput(name, "this file may not be read");
        } catch (IOException e) {
            throw new BadInput(name, "this file cannot be read");
        }
        if (bytes.length > LARGEST) {
            throw new BadInput(name, "larger than the " + LARGEST / 1_000_000 + " MB a rig or gear file may have");
        }
        return decode(bytes, name);
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
                throw new BadInput(name, place(text, nul), "a zero byte stands here; is this a text file?");
            }
            return text;
        } catch (CharacterCodingException e) {
            String before = new String(bytes, 0, in.position(), StandardCharsets.UTF_8);
            throw new BadInput(name, place(before, before.length()), "not UTF-8 from here on; is this a text file?");
        }
    }

    private static Place place(String text, int at) {
        int line =
                1 + (int) text.substring(0, at).chars().filter(c -> c == '\n').count();
        int column = at - text.lastIndexOf('\n', Math.max(0, at - 1));
        return new Place(line, Math.max(1, column), at, at);
    }
}
