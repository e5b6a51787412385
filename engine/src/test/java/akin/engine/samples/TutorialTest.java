package akin.engine.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Does what the tutorial says, in its order: writes its files, runs its commands, and compares what they print.
 * {@code -Dakin.golden=write} writes the printed parts anew.
 */
class TutorialTest {

    private static final Path TUTORIAL = Path.of("..", "samples", "tutorial", "README.md");
    private static final Pattern STEP = Pattern.compile(
            "(?ms)^`([^`\\n]+)`:\\n\\n(`{3,})[a-z]*\\n(.*?)^\\2$|^```console\\n\\$ akin ([^\\n]*)\\n(.*?)^```$");
    private static final long SECONDS = 180;

    @TempDir
    Path folder;

    @Test
    void everythingIsAsPrinted() throws IOException, InterruptedException {
        String text = Files.readString(TUTORIAL);
        Matcher steps = STEP.matcher(text);
        StringBuilder anew = new StringBuilder();
        List<String> commands = new ArrayList<>();
        int done = 0;
        while (steps.find()) {
            if (steps.group(1) != null) {
                Path file = folder.resolve("work").resolve(steps.group(1));
                Files.createDirectories(file.getParent());
                Files.writeString(file, steps.group(3));
                continue;
            }
            commands.add(steps.group(4));
            String printed = run(steps.group(4));
            if (!"write".equals(System.getProperty("akin.golden"))) {
                assertThat(printed).as("akin %s", steps.group(4)).isEqualTo(steps.group(5));
            }
            anew.append(text, done, steps.start(5)).append(printed);
            done = steps.end(5);
        }
        assertThat(commands)
                .anyMatch(command -> command.startsWith("gear test"))
                .anyMatch(command -> command.startsWith("rules test"))
                .anyMatch(command -> command.contains("--rules"));
        if ("write".equals(System.getProperty("akin.golden"))) {
            Files.writeString(TUTORIAL, anew.append(text, done, text.length()));
        }
    }

    /** What a command prints, errors and all, in a process of its own: it runs in the folder that it is told to. */
    private String run(String command) throws IOException, InterruptedException {
        Path out = folder.resolve("out.txt");
        List<String> call = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Dakin.own=" + folder.resolve("own"),
                "-Dstdout.encoding=UTF-8",
                "-Dfile.encoding=UTF-8",
                "-cp",
                System.getProperty("java.class.path"),
                "akin.engine.cli.Akin"));
        call.addAll(List.of(command.split(" ")));
        Process process = new ProcessBuilder(call)
                .directory(folder.resolve("work").toFile())
                .redirectErrorStream(true)
                .redirectOutput(out.toFile())
                .start();
        assertThat(process.waitFor(SECONDS, TimeUnit.SECONDS)).as(command).isTrue();
        return Files.readString(out, StandardCharsets.UTF_8);
    }
}
