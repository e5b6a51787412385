package akin.engine.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The files in {@code samples/ci} do what they say: their commands are taken out of them and run in a production's
 * repository, by a shell, with the launcher's place taken by the classes under test.
 */
@DisabledOnOs(OS.WINDOWS)
class CiSamplesTest {

    private static final Path CI = Path.of("..", "samples", "ci");

    /** Generous: a busy machine starts a process slowly. */
    private static final long SECONDS = 180;

    @TempDir
    Path repository;

    @BeforeEach
    void layOut() throws IOException {
        Path launcher = repository.resolve("tools/akin/engine/bin/akin");
        Files.createDirectories(launcher.getParent());
        Files.writeString(
                launcher,
                "#!/bin/sh\nexec '" + Path.of(System.getProperty("java.home"), "bin", "java") + "' -Xmx256m -cp '"
                        + System.getProperty("java.class.path") + "' " + Akin.class.getName() + " \"$@\"\n");
        assertThat(launcher.toFile().setExecutable(true)).isTrue();
        Files.createDirectories(repository.resolve("rigs/day 1"));
        Files.writeString(repository.resolve("rigs/day 1/rig.yaml"), CallTest.pair());
        Files.writeString(repository.resolve("rigs/second.yaml"), CallTest.blurred());
    }

    @Test
    void theWorkflowPassesWithItsBaselineAndFailsForWhatIsNew() throws Exception {
        JsonNode workflow = yaml("workflow.yml");
        assertThat(workflow.path("on").path("push").path("paths").get(0).stringValue())
                .startsWith("rigs/");
        String how = comment("workflow.yml", "tools/akin/engine/bin/akin baseline.*");
        assertThat(sh(how, workflow).code()).isEqualTo(Akin.PASSES);
        List<String> commands = new ArrayList<>();
        for (JsonNode step : workflow.path("jobs").path("check").path("steps")) {
            if (step.has("run")) {
                commands.add(step.path("run").stringValue());
            }
        }
        assertThat(commands).hasSize(2);

        Run known = sh(commands.get(0), workflow);
        assertThat(known.code()).as(known.err()).isEqualTo(Akin.PASSES);
        Files.writeString(
                repository.resolve("rigs/day 1/rig.yaml"), CallTest.blurred().replace("1/30", "1/25"));
        Run fresh = sh(commands.get(0), workflow);
        assertThat(fresh.code()).as(fresh.err()).isEqualTo(Akin.FAILS);
        assertThat(fresh.out().lines()).anyMatch(line -> line.startsWith("::error file=rigs/day 1/rig.yaml,line="));
        assertThat(fresh.out().lines()).noneMatch(line -> line.startsWith("::error file=rigs/second.yaml"));

        // What the later steps take from the folder is there, whatever the check came to.
        JsonNode steps = workflow.path("jobs").path("check").path("steps");
        String sarif = named(steps, "sarif_file");
        assertThat(Formats.complaints(Formats.json(Files.readString(repository.resolve(sarif)))))
                .isEmpty();
        String folder = named(steps, "path");
        assertThat(repository.resolve(folder))
                .isDirectoryContaining("glob:**.xml")
                .isDirectoryContaining("glob:**.md");
        assertThat(sh(commands.get(1), workflow).code()).isZero();
        assertThat(repository.resolve("summary.md")).content().contains("# RIG FILES", "rigs/day 1/rig.yaml");
    }

    @Test
    void theHookTakesRigFilesAndStopsACommit() throws Exception {
        JsonNode hook =
                yaml("pre-commit-config.yml").path("repos").get(0).path("hooks").get(0);
        Pattern files = Pattern.compile(hook.path("files").stringValue());
        assertThat(files.matcher("rigs/day 1/rig.yaml").find()).isTrue();
        assertThat(files.matcher("rigs/second.yml").find()).isTrue();
        assertThat(files.matcher("notes/rigs/call.yaml").find()).isFalse();
        assertThat(files.matcher("rigs/readme.md").find()).isFalse();
        String entry = hook.path("entry").stringValue();
        JsonNode none = new JsonMapper().createObjectNode();
        assertThat(sh(entry + " 'rigs/day 1/rig.yaml'", none).code()).isEqualTo(Akin.PASSES);
        Run stopped = sh(entry + " 'rigs/day 1/rig.yaml' rigs/second.yaml", none);
        assertThat(stopped.code()).isEqualTo(Akin.FAILS);
        assertThat(stopped.out()).contains("motion/blur-differs");
        sh("tools/akin/engine/bin/akin baseline rigs --out akin-baseline.json", none);
        assertThat(sh(entry + " rigs/second.yaml", none).code()).isEqualTo(Akin.PASSES);
    }

    private static String named(JsonNode steps, String key) {
        for (JsonNode step : steps) {
            if (step.path("with").has(key)) {
                return step.path("with").path(key).stringValue();
            }
        }
        throw new AssertionError("no step has " + key);
    }

    private static JsonNode yaml(String name) throws IOException {
        return new JsonMapper()
                .valueToTree(
                        new Load(LoadSettings.builder().build()).loadFromString(Files.readString(CI.resolve(name))));
    }

    private static String comment(String name, String pattern) throws IOException {
        return Files.readString(CI.resolve(name))
                .lines()
                .filter(line -> line.startsWith("#"))
                .map(line -> line.substring(1).strip())
                .filter(line -> line.matches(pattern))
                .findFirst()
                .orElseThrow();
    }

    /** The command as a build server runs it: by a shell that stops at the first failure, with the file's variables. */
    private Run sh(String command, JsonNode workflow) throws IOException, InterruptedException {
        Path out = Files.createTempFile("out", ".txt");
        Path err = Files.createTempFile("err", ".txt");
        ProcessBuilder builder = new ProcessBuilder("sh", "-e", "-c", command)
                .directory(repository.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile());
        for (Map.Entry<String, JsonNode> variable : workflow.path("env").properties()) {
            builder.environment().put(variable.getKey(), variable.getValue().stringValue());
        }
        builder.environment()
                .put("GITHUB_STEP_SUMMARY", repository.resolve("summary.md").toString());
        Process process = builder.start();
        boolean ended = process.waitFor(SECONDS, TimeUnit.SECONDS);
        process.destroyForcibly();
        assertThat(ended).as(command).isTrue();
        Run run = new Run(
                process.exitValue(),
                Files.readString(out, StandardCharsets.UTF_8),
                Files.readString(err, StandardCharsets.UTF_8));
        Files.delete(out);
        Files.delete(err);
        return run;
    }
}
