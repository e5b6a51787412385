import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;

/**
 * Writes a kit list of invented gear: {@code java KitList.java FOLDER BODIES LENSES}. Each body has five modes with four
 * profiles each, so that 50 bodies with 100 lenses are 100,000 candidates. The same numbers give the same bytes.
 */
public final class KitList {

    private static final String[] ENCODINGS = {"sony-s-log3", "hlg", "bt709", "arri-logc4"};
    private static final String[] PROFILES = {"log", "hybrid", "finished", "wide"};
    private static final String[] GAMUTS = {"s-gamut3", "bt2020", "bt709", "arri-wide-gamut-4"};
    private static final double[] WIDTHS = {36.0, 24.0, 27.5, 17.3, 13.2};
    private static final String[] PICTURES = {"3840x2160", "4096x2160", "6144x3456", "1920x1080", "5760x3240"};

    private KitList() {}

    public static void main(String[] args) throws IOException {
        Path folder = Files.createDirectories(Path.of(args[0]));
        Random random = new Random(4);
        StringBuilder bodies = new StringBuilder("akin-gear: 1\nsource: invented\nbodies:\n");
        for (int b = 0; b < Integer.parseInt(args[1]); b++) {
            bodies.append(body(b, random));
        }
        Files.writeString(folder.resolve("bodies.yaml"), bodies);
        StringBuilder lenses = new StringBuilder("akin-gear: 1\nsource: invented\nlenses:\n");
        for (int l = 0; l < Integer.parseInt(args[2]); l++) {
            lenses.append(lens(l, random));
        }
        Files.writeString(folder.resolve("lenses.yaml"), lenses);
    }

    private static String body(int number, Random random) {
        StringBuilder out = new StringBuilder();
        int base = 100 * (1 + random.nextInt(8));
        out.append(line("  bramling-%d:", number))
                .append(line("    name: Bramling %d", number))
                .append(line("    mount: %s", random.nextInt(4) == 0 ? "mft" : "alder"))
                .append("    shutter: {angles: [45°, 90°, 144°, 172.8°, 180°, 270°], times: [1/25, 1/30, 1/50, 1/60, 1/100, 1/120, 1/200]}\n")
                .append("    iso: {from: 100, to: 25600}\n    white: {from: 2500 K, to: 9900 K, step: 100 K}\n")
                .append(line("    tint-scale: scale %d", random.nextInt(3)))
                .append(line("    internal-nd: %s", random.nextBoolean() ? "[]" : "[ND 0.6, ND 1.2, ND 1.8]"))
                .append(line("    stabilisation: %s\n    steady-travel: 1.5", random.nextBoolean() ? "none" : "sensor"))
                .append("    rolls: true\n    ir-cut: true\n    aids: [waveform, zebra]\n    lut-sizes: [17, 33]\n")
                .append("    keeps-settings: true\n    firmware: '1.0'\n")
                .append(line("    power: %d W\n    mass: %.1f kg", 8 + random.nextInt(40), 0.6 + random.nextInt(30) / 10.0))
                .append("    modes:\n");
        for (int m = 0; m < WIDTHS.length; m++) {
            double width = WIDTHS[m] - random.nextInt(10) / 10.0;
            out.append(line(
                    "      mode-%d: {picture: %s, area: %.2f x %.2f mm, rates: [24000/1001, %s25, 30000/1001], readout: %.1f ms,"
                            + " sampling: oversampled, heat-limit: none}",
                    m, PICTURES[m], width, width * 9 / 16, m == 3 ? "" : "24, ", 4 + random.nextInt(200) / 10.0));
        }
        out.append("    profiles:\n");
        for (int p = 0; p < PROFILES.length; p++) {
            out.append(line(
                    "      %s: {encoding: %s, gamut: %s, iso-floor: %d, iso-bases: [%d, %d], headroom: %.1f stops, footroom: %.1f stops,"
                            + " look: %b}",
                    PROFILES[p], ENCODINGS[p], GAMUTS[p], base, base, base * 4, 2 + random.nextInt(50) / 10.0,
                    4 + random.nextInt(40) / 10.0, p == 2));
        }
        return out.append("    codecs:\n")
                .append(line("      inside: {kind: encoded, bits: %d, chroma: '4:2:2', data: {rate: %d Mbit/s}}",
                        random.nextBoolean() ? 10 : 8, 100 + random.nextInt(500)))
                .append("    outputs:\n      out: {kind: encoded, bits: 10, chroma: '4:2:2', range: legal, connector: 12g-sdi, overlays: false, trigger: true, delay: 0}\n")
                .append("    clips: {limit: none, files: none, names: X}\n    clock: {ppm: 0.5, takes: [jammed, box]}\n")
                .toString();
    }

    private static String lens(int number, Random random) {
        boolean zoom = number % 3 == 0;
        double focal = 12 + random.nextInt(700) / 10.0;
        double open = new double[] {1.4, 1.8, 2.0, 2.8, 4.0}[random.nextInt(5)];
        return line(
                "  thornel-%d: {name: Thornel %d, family: series %d, mount: %s, focal: %.1f mm,%s squeeze: 1, open: f/%.1f,"
                        + " closed: f/22, open-t: T%.1f, closed-t: T22, iris: %s, circle: %.1f mm, close-focus: 0.4 m,"
                        + " stabilised: false, mass: %.1f kg}",
                number, number, number % 7, number % 5 == 0 ? "mft" : "alder", focal,
                zoom ? String.format(Locale.ROOT, " focal-to: %.1f mm,", focal * 3) : "", open, open * 1.1,
                number % 2 == 0 ? "stepless" : "thirds", 22 + random.nextInt(240) / 10.0, 0.4 + random.nextInt(20) / 10.0);
    }

    private static String line(String format, Object... values) {
        return String.format(Locale.ROOT, format + "\n", values);
    }
}
