package akin.engine.cli;

import akin.model.rig.Rig;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

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

    /**
     * What classes that were compiled against this Akin fit: its version, its build, this Java. A build is told by the age and
     * size of the jar that holds the model.
     */
    static String fitting() {
        String build;
        try {
            Path place = Path.of(Rig.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
            build = Files.size(place) + " " + Files.getLastModifiedTime(place).toMillis();
        } catch (IOException | URISyntaxException e) {
            build = "unknown";
        }
        return number() + "\n" + build + "\n" + System.getProperty("java.vm.name") + " "
                + System.getProperty("java.vm.version");
    }
}
