package akin.engine.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** What is said of files that cannot be a rig at all. */
class BadFileTest {

    @TempDir
    Path folder;

    @Test
    void missing() {
        String file = folder.resolve("rig.yaml").toString();
        Said.of(Run.of("check", file), file).says(List.of("there is no such file"));
    }

    @Test
    void missingBesideOneOfNearlyThatName() throws IOException {
        Files.writeString(folder.resolve("market.yaml"), Rigs.MARKET);
        String file = folder.resolve("makret.yaml").toString();
        Said.of(Run.of("check", file), file)
                .says(List.of("there is no such file", "Did you mean '" + folder.resolve("market.yaml") + "'?"));
    }

    @Test
    void folder() {
        Said.of(Run.of("check", folder.toString()), folder.toString()).says(List.of("no rig file is in this folder"));
    }

    @Test
    void belowAFile() throws IOException {
        String file = write("rig.yaml", Rigs.MARKET.getBytes(UTF_8)) + "/more.yaml";
        Said.of(Run.of("check", file), file).says(List.of("file"));
    }

    @Test
    void binary() throws IOException {
        String file = write("rig.yaml", new byte[] {'a', ':', ' ', 1, 2, 3, 0, (byte) 0xff});
        Said.of(Run.of("check", file), file).isAt("1:8").says(List.of("not UTF-8", "is this a text file?"));
    }

    @Test
    void notUtf8BehindARareLetter() throws IOException {
        byte[] start = "akin: 1\r\nproduction: {name: 𝔄".getBytes(UTF_8);
        byte[] all = java.util.Arrays.copyOf(start, start.length + 2);
        all[start.length] = (byte) 0xe9;
        all[start.length + 1] = '\n';
        String file = write("rig.yaml", all);
        Said.of(Run.of("check", file), file).isAt("2:21").says(List.of("not UTF-8 from here on"));
    }

    @Test
    void sixteenBitText() throws IOException {
        String file = write("rig.yaml", Rigs.MARKET.getBytes(java.nio.charset.StandardCharsets.UTF_16));
        Said.of(Run.of("check", file), file).isAt("1:1").says(List.of("not UTF-8"));
    }

    @Test
    void aMarkBeforeTheTextIsNoColumn() throws IOException {
        String file = write("rig.yaml", "\uFEFFakni: 1\n".getBytes(UTF_8));
        Said.of(Run.of("check", file), file).isAt("1:1").says(List.of("the key 'akin' is missing"));
        String second = write("rig.yaml", "\uFEFFakin: 2\n".getBytes(UTF_8));
        Said.of(Run.of("check", second), second).isAt("1:7").says(List.of("read '2'"));
    }

    @Test
    void fiftyMegabytes() throws IOException {
        Path file = folder.resolve("rig.yaml");
        try (RandomAccessFile large = new RandomAccessFile(file.toFile(), "rw")) {
            large.setLength(50_000_000);
        }
        Said.of(Run.of("check", file.toString()), file.toString()).says(List.of("larger than the 1 MB"));
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void unreadable() throws IOException {
        Path file = Path.of(write("rig.yaml", Rigs.MARKET.getBytes(UTF_8)));
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("---------"));
        assumeFalse(Files.isReadable(file), "the administrator may read everything");
        Said.of(Run.of("check", file.toString()), file.toString()).says(List.of("this file may not be read"));
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void failingWhileItIsRead() {
        Said.of(Run.of("check", "/proc/self/mem"), "/proc/self/mem").says(List.of("this file cannot be read"));
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    @Timeout(value = 60, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
    void aPipeThatNobodyWritesToDoesNotHoldUp() throws IOException, InterruptedException {
        String file = folder.resolve("pipe").toString();
        Process make = new ProcessBuilder("mkfifo", file).start();
        assertThat(make.waitFor(30, TimeUnit.SECONDS)).isTrue();
        assertThat(make.exitValue()).isZero();
        Said.of(Run.of("check", file), file)
                .says(List.of("this is a pipe or a device", "save what it gives as a file"));
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void aDeviceWithoutEnd() {
        Said.of(Run.of("check", "/dev/zero"), "/dev/zero").says(List.of("this is a pipe or a device"));
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void controlCharactersInTheNameStayOneLine() {
        String name = "rig\nakin: all is well\u001b[2J\u2028.yaml";
        Said.of(Run.of("check", name), "rig\\nakin: all is well\\u001B[2J\\u2028.yaml")
                .says(List.of("there is no such file"));
    }

    @Test
    void aNameThatNoFileCanHave() {
        Said.of(Run.of("check", "rig\0.yaml"), "rig\\u0000.yaml").says(List.of("cannot be the name of a file"));
    }

    private String write(String name, byte[] bytes) throws IOException {
        return Files.write(folder.resolve(name), bytes).toString();
    }
}
