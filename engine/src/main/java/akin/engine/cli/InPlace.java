package akin.engine.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import akin.engine.read.BadInput;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/**
 * Puts a new text in place of a file's old one, at once or not at all: whoever reads the file meanwhile, and whatever
 * breaks, finds the old text or the new one whole.
 */
final class InPlace {

    private InPlace() {}

    /**
     * Replaces the text of a file. A symbolic link is followed: the file it leads to is replaced, the link stays. Its
     * permissions, owner and group are kept as far as the system lets them be.
     *
     * @param name the file as it was named
     * @param before the text that the new one was made from, with every byte of the file
     * @param after the new text
     * @throws BadInput when the file no longer says what it did, or cannot be replaced; it is then as it was
     */
    static void replace(String name, String before, String after) {
        Path made = null;
        try {
            Path target = Call.path(name).toRealPath();
            if (!Files.isWritable(target)) {
                throw new BadInput(name, "this file may not be written; nothing was changed");
            }
            Path folder = target.getParent();
            if (folder == null) {
                throw new BadInput(name, "this file cannot be replaced; nothing was changed");
            }
            made = Files.createTempFile(folder, ".akin-", ".tmp");
            write(made, after);
            keepAttributes(target, made);
            if (!MessageDigest.isEqual(digest(before.getBytes(UTF_8)), digest(Files.readAllBytes(target)))) {
                throw new BadInput(
                        name, "this file was changed by somebody else meanwhile; nothing was written, call again");
            }
            Files.move(made, target, StandardCopyOption.ATOMIC_MOVE);
            made = null;
        } catch (IOException e) {
            throw new BadInput(name, "this file cannot be replaced in its folder; nothing was changed");
        } finally {
            remove(made);
        }
    }

    private static void write(Path file, String text) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(UTF_8));
            while (bytes.hasRemaining()) {
                channel.write(bytes);
            }
            channel.force(true);
        }
    }

    private static void keepAttributes(Path from, Path to) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(to, PosixFileAttributeView.class);
        if (view == null) {
            return;
        }
        PosixFileAttributes old = Files.readAttributes(from, PosixFileAttributes.class);
        try {
            view.setGroup(old.group());
            view.setOwner(old.owner());
        } catch (IOException e) {
            // Only the administrator may give files away; the text matters more than whose it is.
        }
        view.setPermissions(old.permissions());
    }

    private static byte[] digest(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private static void remove(@org.jspecify.annotations.Nullable Path file) {
        if (file != null) {
            try {
                Files.deleteIfExists(file);
            } catch (IOException e) {
                // What is left over is a hidden file beside the rig; the reason it is there is told already.
            }
        }
    }
}
