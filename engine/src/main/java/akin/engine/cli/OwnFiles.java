package akin.engine.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Where the person who runs Akin keeps what it remembers for them: what they trust, and what was compiled. Whoever can write
 * there decides what code runs, so nothing is taken from a file that another could have written.
 */
final class OwnFiles {

    private static final Set<PosixFilePermission> OWNER = PosixFilePermissions.fromString("rwx------");
    private static final Set<PosixFilePermission> OTHERS_WRITE =
            Set.of(PosixFilePermission.GROUP_WRITE, PosixFilePermission.OTHERS_WRITE);

    /** A system property: one folder for all of it, in place of those of the person, for tests. */
    private static final String INSTEAD = "akin.own";

    private OwnFiles() {}

    /** The folder for settings; empty where there is no home. */
    static Optional<Path> settings() {
        return below("XDG_CONFIG_HOME", ".config");
    }

    /** The folder for what can be made anew; empty where there is no home, or none is wanted. */
    static Optional<Path> cache() {
        return "1".equals(System.getenv("AKIN_NO_CACHE")) ? Optional.empty() : below("XDG_CACHE_HOME", ".cache");
    }

    private static Optional<Path> below(String variable, String otherwise) {
        String instead = System.getProperty(INSTEAD);
        if (instead != null) {
            return Optional.of(Path.of(instead, otherwise));
        }
        String named = System.getenv(variable);
        if (named != null && named.startsWith("/")) {
            return Optional.of(Path.of(named, "akin"));
        }
        String home = System.getenv("HOME") == null ? System.getProperty("user.home") : System.getenv("HOME");
        return home == null || home.isEmpty() || !Files.isDirectory(Path.of(home))
                ? Optional.empty()
                : Optional.of(Path.of(home, otherwise, "akin"));
    }

    /** What a file holds; null when there is none, or another could have written it. */
    static byte @Nullable [] read(Path file, int largest) {
        try {
            if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) || !mine(file) || Files.size(file) > largest) {
                return null;
            }
            return Files.readAllBytes(file);
        } catch (IOException e) {
            return null;
        }
    }

    /** True when a file belongs to whoever runs this, and nobody else may write to it. */
    static boolean mine(Path file) throws IOException {
        try {
            PosixFileAttributes attributes = Files.readAttributes(file, PosixFileAttributes.class);
            Path home = Path.of(System.getProperty("user.home"));
            return attributes.permissions().stream().noneMatch(OTHERS_WRITE::contains)
                    && (!Files.exists(home)
                            || attributes.owner().getName().equals(System.getProperty("user.name"))
                            || attributes.owner().equals(Files.getOwner(home)));
        } catch (UnsupportedOperationException e) {
            // A file system without owners: then there is nobody else.
            return true;
        }
    }

    /** Writes a file whole, for its owner alone. */
    static void write(Path file, byte[] bytes) throws IOException {
        Path folder = Objects.requireNonNull(file.toAbsolutePath().getParent(), "a file lies in a folder");
        boolean posix = folder.getFileSystem().supportedFileAttributeViews().contains("posix");
        if (!Files.isDirectory(folder)) {
            if (posix) {
                Files.createDirectories(folder, PosixFilePermissions.asFileAttribute(OWNER));
            } else {
                Files.createDirectories(folder);
            }
        }
        // A temporary file is its owner's alone from the start.
        Path fresh = Files.createTempFile(folder, "akin", ".new");
        try {
            Files.write(fresh, bytes);
            Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(fresh);
        }
    }
}
