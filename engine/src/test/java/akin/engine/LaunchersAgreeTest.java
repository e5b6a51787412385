package akin.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The two launchers are written in two languages and must start Java alike: what is told to one must reach the other. */
class LaunchersAgreeTest {
    private static final String SHELL = read("akin");
    private static final String WINDOWS = read("akin.cmd");

    @Test
    void everyStartHasTheSameOptions() {
        assertThat(one(WINDOWS, "set \"AKIN_QUICK=([^\"]+)\"")).isEqualTo(one(SHELL, "quick_start='([^']+)'"));
        assertThat(one(WINDOWS, "(akin\\.[a-z.]+\\.[A-Z]\\w+) %\\*")).isEqualTo(one(SHELL, "main_class=(\\S+)"));
        String logging = "-Xlog:disable -Xlog:all=error:stderr";
        assertThat(List.of(SHELL, WINDOWS))
                .allSatisfy(launcher -> assertThat(launcher).contains(logging));
    }

    @Test
    void eachCommandHasTheSameRoom() {
        Map<String, String> shell = new LinkedHashMap<>();
        shell.put("", one(SHELL, "\n *room=(\\S+)\n"));
        shell.putAll(pairs(SHELL, "(\\w+)\\) room='?(-[^;']+)'? ;;"));
        Map<String, String> windows = new LinkedHashMap<>();
        windows.put("", one(WINDOWS, "\nset \"AKIN_ROOM=([^\"]+)\""));
        windows.putAll(pairs(WINDOWS, "if \"%~1\"==\"(\\w+)\" set \"AKIN_ROOM=([^\"]+)\""));
        assertThat(shell).containsKeys("", "survey", "solve");
        assertThat(windows).isEqualTo(shell);
    }

    @Test
    void theArchiveIsMadeByTheSameRun() {
        String run = one(SHELL, "\"\\$main_class\" (check \\w+)\n");
        assertThat(one(WINDOWS, "-Dakin.terminal=false akin\\.[\\w.]+ ([\\w ]+) >nul"))
                .isEqualTo(run);
        assertThat(one(WINDOWS, "(-Xmx\\w+) -Xlog:disable \"%AKIN_MAKE%\""))
                .isEqualTo(one(SHELL, "\\$quick_start (-Xmx\\w+) -Xlog:disable \"\\$@\""));
    }

    @Test
    void bothBuildWithTheSameCommand() {
        assertThat(one(WINDOWS, "call \"%AKIN_MAVEN%\" (.+?) >")).isEqualTo(one(SHELL, "\"\\$mvn\" (.+?)\\) >"));
    }

    private static Map<String, String> pairs(String in, String pattern) {
        Map<String, String> found = new LinkedHashMap<>();
        Matcher matcher = Pattern.compile(pattern).matcher(in);
        while (matcher.find()) {
            found.put(matcher.group(1), matcher.group(2));
        }
        return found;
    }

    private static String one(String in, String pattern) {
        Matcher matcher = Pattern.compile(pattern).matcher(in);
        assertThat(matcher.find()).as("a launcher has %s", pattern).isTrue();
        return matcher.group(1);
    }

    private static String read(String launcher) {
        try {
            return Files.readString(Path.of("bin", launcher)).replace("\r\n", "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
