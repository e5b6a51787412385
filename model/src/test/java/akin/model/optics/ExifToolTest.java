package akin.model.optics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import akin.model.exposure.Light;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Runs ExifTool beside our own formulas on the same settings.
 *
 * <p>Its conventions: hyperfocal distance without + f; circle of confusion diagonal / 1440; the crop from the 35 mm
 * equivalent; an angle of view over 36 mm at infinity with pi taken as 3.14159; 0 for a far limit at infinity.
 */
class ExifToolTest {
    private record Shot(double focal, double fNumber, int focal35, double subjectM, int shutter, int iso) {}

    @Test
    void sameSettingsSameFigures(@TempDir Path folder) throws IOException, InterruptedException {
        assumeTrue(onPath("exiftool"), "needs exiftool on the PATH (Debian package libimage-exiftool-perl)");
        List<Shot> shots = shots();
        List<String> call = new ArrayList<>();
        for (int i = 0; i < shots.size(); i++) {
            Shot shot = shots.get(i);
            Path file = folder.resolve("shot-%02d.jpg".formatted(i));
            assertThat(ImageIO.write(new BufferedImage(6, 4, BufferedImage.TYPE_INT_RGB), "jpg", file.toFile()))
                    .isTrue();
            call.addAll(List.of(
                    "-n",
                    "-FocalLength=" + shot.focal(),
                    "-FNumber=" + shot.fNumber(),
                    "-FocalLengthIn35mmFormat=" + shot.focal35(),
                    "-SubjectDistance=" + shot.subjectM(),
                    "-ExposureTime=1/" + shot.shutter(),
                    "-ISO=" + shot.iso(),
                    file.toString(),
                    "-execute"));
        }
        Path writing = Files.write(folder.resolve("writing.args"), call);
        run(folder, "exiftool", "-@", writing.toString());

        List<String> lines = run(
                folder,
                "exiftool",
                "-n",
                "-q",
                "-fileOrder",
                "FileName",
                "-ext",
                "jpg",
                "-p",
                "$CircleOfConfusion $HyperfocalDistance $DOF $FOV $LightValue",
                folder.toString());

        assertThat(lines).hasSameSizeAs(shots);
        int reachingInfinity = 0;
        for (int i = 0; i < shots.size(); i++) {
            Shot shot = shots.get(i);
            double[] theirs = numbers(lines.get(i));
            assertThat(theirs).as(lines.get(i)).hasSize(6);
            double circle = DepthOfField.circleOfConfusion(FieldOfView.diagonalFromCrop(shot.focal35() / shot.focal()));
            DepthOfField ours = DepthOfField.of(
                    shot.focal(), shot.fNumber(), circle, 1000 * shot.subjectM(), HyperfocalConvention.SIMPLIFIED);
            assertThat(circle).as("%s", shot).isCloseTo(theirs[0], within(1e-9));
            assertThat(ours.hyperfocalMm() / 1000).as("%s", shot).isCloseTo(theirs[1], within(1e-6 * theirs[1]));
            assertThat(ours.nearMm() / 1000).as("%s", shot).isCloseTo(theirs[2], within(1e-6 * theirs[2]));
            if (ours.reachesInfinity()) {
                reachingInfinity++;
                assertThat(theirs[3]).as("%s", shot).isZero();
            } else {
                assertThat(ours.farMm() / 1000).as("%s", shot).isCloseTo(theirs[3], within(1e-6 * theirs[3]));
            }
            assertThat(FieldOfView.degrees(36, shot.focal35(), 1))
                    .as("%s", shot)
                    .isCloseTo(theirs[4], within(1e-3));
            assertThat(Light.lightValue(shot.fNumber(), 1.0 / shot.shutter(), shot.iso()))
                    .as("%s", shot)
                    .isCloseTo(theirs[5], within(1e-6));
        }
        assertThat(reachingInfinity).isBetween(1, shots.size() - 1);
    }

    private static List<Shot> shots() {
        Random random = new Random(56);
        int[] isos = {100, 200, 400, 640, 800, 1600, 3200, 12_800};
        int[] shutters = {24, 48, 50, 60, 100, 250, 1000};
        double[] stops = {1.4, 2, 2.8, 4, 5.6, 8, 11, 16, 22};
        List<Shot> shots = new ArrayList<>();
        for (int i = 0; i < 24; i++) {
            double focal = (80 + random.nextInt(1200)) / 10.0;
            int focal35 = (int) Math.round(focal * (1 + 2 * random.nextDouble()));
            shots.add(new Shot(
                    focal,
                    stops[random.nextInt(stops.length)],
                    focal35,
                    (5 + random.nextInt(300)) / 10.0,
                    shutters[random.nextInt(shutters.length)],
                    isos[random.nextInt(isos.length)]));
        }
        return shots;
    }

    private static double[] numbers(String line) {
        return List.of(line.split(" ", -1)).stream()
                .mapToDouble(Double::parseDouble)
                .toArray();
    }

    private static List<String> run(Path folder, String... command) throws IOException, InterruptedException {
        Path output = folder.resolve("output.txt");
        Path errors = folder.resolve("errors.txt");
        Process process = new ProcessBuilder(command)
                .redirectOutput(output.toFile())
                .redirectError(errors.toFile())
                .start();
        int status = process.waitFor();
        assertThat(status).as(() -> "exit status; it said " + read(errors)).isZero();
        return Files.readAllLines(output, StandardCharsets.UTF_8);
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            return e.toString();
        }
    }

    private static boolean onPath(String program) {
        String path = System.getenv().getOrDefault("PATH", "");
        return List.of(path.split(File.pathSeparator, -1)).stream()
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
    }
}
