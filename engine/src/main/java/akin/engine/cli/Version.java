package akin.engine.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The version of this build. */
final class Version {

    private Version() {}

    static String number() {
        try (InputStream in = Version.class.getResourceAsStream("/akin/version.txt")) {
            if (in == null) {
                throw new IllegalStateException("the version is missing; build Akin again");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).strip();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
