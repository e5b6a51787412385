package akin.engine.cli;

import akin.engine.book.PackClasses;
import akin.engine.book.PackCompiler;
import akin.engine.book.RulePack;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Keeps what packs were compiled to, since compiling takes seconds: a file for each pack as it is, this Akin and this Java.
 * The digest of the rest stands in front, so a file that broke is made anew.
 */
final class RuleCache {

    private static final int LARGEST = 50_000_000;
    private static final int DIGEST = 32;

    private final @Nullable Path folder;
    private final String fitting;

    /**
     * A cache.
     *
     * @param folder where files are kept; empty for nowhere
     * @param fitting the Akin and the Java that the classes have to fit
     */
    RuleCache(Optional<Path> folder, String fitting) {
        this.folder = folder.map(f -> f.resolve("rules")).orElse(null);
        this.fitting = fitting;
    }

    /** The compiled rules of a pack, from the cache where they are kept. */
    PackClasses classes(RulePack pack) {
        Path file = folder == null
                ? null
                : folder.resolve(
                        HexFormat.of().formatHex(sha((pack.digest() + "\n" + fitting).getBytes(StandardCharsets.UTF_8)))
                                + ".rules");
        PackClasses kept = file == null ? null : kept(file);
        if (kept != null) {
            return kept;
        }
        byte[] jar = PackCompiler.compile(pack);
        if (file != null) {
            try {
                OwnFiles.write(
                        file,
                        ByteBuffer.allocate(DIGEST + jar.length)
                                .put(sha(jar))
                                .put(jar)
                                .array());
            } catch (IOException notKept) {
                // Then it is compiled again the next time.
            }
        }
        return new PackClasses(jar);
    }

    private static @Nullable PackClasses kept(Path file) {
        byte[] whole = OwnFiles.read(file, LARGEST);
        if (whole == null || whole.length < DIGEST) {
            return null;
        }
        byte[] jar = Arrays.copyOfRange(whole, DIGEST, whole.length);
        if (!Arrays.equals(sha(jar), Arrays.copyOf(whole, DIGEST))) {
            return null;
        }
        try {
            return new PackClasses(jar);
        } catch (IllegalArgumentException broken) {
            return null;
        }
    }

    private static byte[] sha(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
