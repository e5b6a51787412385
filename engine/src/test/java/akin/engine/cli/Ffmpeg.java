package akin.engine.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Debian's ffmpeg, which makes the clips that tests read. */
final class Ffmpeg {

    private static final Path PROGRAM = Path.of("/usr/bin/ffmpeg");
    private static final Path READER = Path.of("/usr/bin/ffprobe");

    private Ffmpeg() {}

    /** Where it is not installed the tests that want it are skipped and say so, except where CI is set. */
    static void require() {
        assumeTrue(
                (Files.isExecutable(PROGRAM) && Files.isExecutable(READER)) || System.getenv("CI") != null,
                "skipped: ffmpeg is not installed; .ci/run installs it on Debian");
    }

    /**
     * Makes a clip of a test picture.
     *
     * @param size width and height, such as {@code 320x180}
     * @param rate frames per second
     * @param frames how many
     * @param sound seconds of sound at 48 kHz; null for none
     * @param options how it is coded
     */
    static Path make(Path clip, String size, String rate, int frames, String sound, String... options)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                PROGRAM.toString(),
                "-v",
                "error",
                "-nostdin",
                "-y",
                "-f",
                "lavfi",
                "-i",
                "testsrc2=s=" + size + ":r=" + rate + ",trim=end_frame=" + frames));
        if (sound != null) {
            command.addAll(List.of("-f", "lavfi", "-i", "sine=r=48000:d=" + sound));
        }
        command.addAll(List.of("-threads", "1"));
        command.addAll(List.of(options));
        command.add("file:" + clip.toAbsolutePath());
        run(command);
        return clip;
    }

    /** What ffprobe prints of a clip, as a person saves it. */
    static String probe(Path clip) throws IOException, InterruptedException {
        return run(List.of(
                READER.toString(),
                "-v",
                "error",
                "-print_format",
                "json",
                "-show_format",
                "-show_streams",
                "file:" + clip.toAbsolutePath()));
    }

    private static String run(List<String> command) throws IOException, InterruptedException {
        Path out = Files.createTempFile("akin", ".out");
        try {
            Process process = new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(out.toFile())
                    .start();
            assertThat(process.waitFor(5, TimeUnit.MINUTES)).isTrue();
            String said = Files.readString(out);
            assertThat(process.exitValue()).as("%s: %s", command, said).isZero();
            return said;
        } finally {
            Files.deleteIfExists(out);
        }
    }
}
