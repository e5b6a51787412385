package akin.engine.equip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import akin.engine.read.BadInput;
import akin.model.gear.Body;
import akin.model.gear.Lens;
import akin.model.gear.Mode;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.xpath.XPath;
import javax.xml.xpath.XPathConstants;
import javax.xml.xpath.XPathFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

/** The lensfun database as gear: on the whole of it where it is installed, and on invented entries of its form. */
class LensfunTest {

    private static final Path INSTALLED = Path.of(Lensfun.INSTALLED);

    @TempDir
    Path folder;

    private static void assumeInstalled() {
        // Where CI is set nothing is passed over.
        assumeTrue(
                Files.isDirectory(INSTALLED) || System.getenv("CI") != null,
                "needs the lensfun database (Debian package liblensfun-data-v1)");
    }

    /** Counted by other means: XPath over document trees. */
    @Test
    void readsEveryCameraAndLensThereIs() throws Exception {
        assumeInstalled();
        Lensfun.Read read = Lensfun.read(INSTALLED);
        assertThat(read.cameras())
                .isEqualTo(counted("count(/lensdatabase/camera)"))
                .isGreaterThan(500);
        assertThat(read.lenses())
                .isEqualTo(counted("count(/lensdatabase/lens)"))
                .isGreaterThan(500);
        int fitted = counted("count(/lensdatabase/lens/mount) + count(/lensdatabase/lens[not(mount)])");
        // Some are there twice, calibrated on pictures of two sizes.
        assertThat(read.gear().lenses().size()).isBetween(fitted * 8 / 10, fitted);
        assertThat(read.gear().bodies().size()).isBetween(read.cameras() * 95 / 100, read.cameras());
        assertThat(read.gear().bodies().values()).allSatisfy(body -> {
            assertThat(body.mount()).isNotNull();
            assertThat(body.modes().get(Lensfun.MODE).cropFactor()).isNotNull();
            assertThat(body.shutter()).isNull();
        });
        long withFocal = read.gear().lenses().values().stream()
                .filter(lens -> lens.focal() != null)
                .count();
        assertThat(withFocal).isGreaterThan(fitted * 7L / 10);
        assertThat(read.gear().lenses().keySet()).allMatch(id -> id.matches("[a-z0-9]+(-[a-z0-9]+)*"));
        assertThat(read.gear().bodies().keySet()).allMatch(id -> id.matches("[a-z0-9]+(-[a-z0-9]+)*"));
    }

    @Test
    void readsTheSameEveryTime() {
        assumeInstalled();
        assertThat(Lensfun.read(INSTALLED)).isEqualTo(Lensfun.read(INSTALLED));
    }

    private static int counted(String expression) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        DocumentBuilder builder = factory.newDocumentBuilder();
        builder.setEntityResolver((publicId, systemId) -> new InputSource(new StringReader("")));
        XPath path = XPathFactory.newInstance().newXPath();
        int all = 0;
        List<Path> files;
        try (Stream<Path> tree = Files.walk(INSTALLED)) {
            files = tree.filter(file -> file.toString().endsWith(".xml")).toList();
        }
        for (Path file : files) {
            Document document = builder.parse(file.toFile());
            all += ((Double) path.evaluate(expression, document, XPathConstants.NUMBER)).intValue();
        }
        return all;
    }

    private Lensfun.Read read(String entries) throws IOException {
        Files.writeString(
                folder.resolve("all.xml"), "<lensdatabase version=\"1\">\n" + entries + "\n</lensdatabase>\n");
        return Lensfun.read(folder);
    }

    @Test
    void aCameraIsABodyWithOneModeOfItsCropFactor() throws IOException {
        Lensfun.Read read = read("""
                <camera>
                  <maker>Bramling Optical Works</maker><maker lang="en">Bramling</maker>
                  <model>Bramling Ça+ 3</model><variant>wide</variant>
                  <mount>Thornel K/2</mount><cropfactor>1.531</cropfactor>
                </camera>""");
        Body body = read.gear().bodies().get("bramling-ca-plus-3-wide");
        assertThat(body).isNotNull();
        assertThat(body.name()).isEqualTo("Bramling Ça+ 3 (wide)");
        assertThat(body.mount()).isEqualTo("thornel-k-2");
        assertThat(read.gear().mounts().get("thornel-k-2").name()).isEqualTo("Thornel K/2");
        Mode mode = body.modes().get("frame");
        assertThat(mode).isNotNull();
        assertThat(String.valueOf(mode.cropFactor())).isEqualTo("1.531 by diagonal");
        assertThat(mode.activeArea())
                .as("the shape of the picture is not known")
                .isNull();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // what stands in the entry | focal, focal-to, open, open at the long end, closed, squeeze
                "<model>Thornel 35mm f/1.8</model> | 35 mm, null, f/1.8, null, null, 1.0",
                "<model>Thornel 24-70mm f/4</model> | 24 mm, 70 mm, f/4, null, null, 1.0",
                "<model>Thornel 28-200 mm 1:3.5-5.6</model> | 28 mm, 200 mm, f/3.5, f/5.6, null, 1.0",
                "<model>Thornel X</model><focal value='50'/><aperture min='2' max='16'/> | 50 mm, null, f/2, null, f/16, 1.0",
                // an element gives the widest stop at the short end only; at the other end it is not known
                "<model>Thornel Y</model><focal min='16' max='50'/><aperture min='3.5' max='22'/> | 16 mm, 50 mm, null, null, f/22, 1.0",
                "<model>Thornel Z</model> | null, null, null, null, null, 1.0",
                "<model>Thornel 8mm f/3.5</model><type>fisheye</type> | 8 mm, null, f/3.5, null, null, null",
                // names that mean something else
                "<model>Thornel F100 0.5mm</model> | null, null, null, null, null, 1.0",
                "<model>Thornel 70-24mm</model> | null, null, null, null, null, 1.0",
            })
    void aLensHasWhatItsEntryOrItsNameSays(String entry, String facts) throws IOException {
        Lensfun.Read read = read("<lens><maker>Bramling</maker>" + entry + "<mount>Alder</mount></lens>");
        Lens lens = read.gear().lenses().values().iterator().next();
        assertThat(Stream.of(
                                lens.focal(),
                                lens.focalTo(),
                                lens.open(),
                                lens.openAtLong(),
                                lens.closed(),
                                lens.squeeze())
                        .map(String::valueOf)
                        .toList())
                .isEqualTo(List.of(facts.split(", ")));
        assertThat(lens.circle()).isNull();
        assertThat(lens.openT()).isNull();
    }

    @Test
    void idsTellApartWhatDiffersAndJoinWhatIsTheSame() throws IOException {
        Lensfun.Read read = read("""
                <lens><maker>Bramling</maker><model>50mm f/2</model><mount>Alder</mount><cropfactor>1</cropfactor></lens>
                <lens><maker>Bramling</maker><model>50mm f/2</model><mount>Alder</mount><cropfactor>1.5</cropfactor></lens>
                <lens><maker>Bramling</maker><model>50mm f/2</model><mount>Heddle</mount></lens>
                <lens><maker>Bramling</maker><model>90mm</model><mount>Alder</mount><mount>Heddle</mount></lens>
                <lens><maker>Bramling</maker><model>fixed lens</model><mount>bramlingOne</mount></lens>""");
        assertThat(read.lenses()).isEqualTo(5);
        assertThat(read.gear().lenses().keySet())
                .containsExactlyInAnyOrder(
                        "bramling-50mm-f-2",
                        "bramling-50mm-f-2-2",
                        "bramling-90mm-alder",
                        "bramling-90mm-heddle",
                        "bramling-fixed-lens-bramlingone");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "<camera><maker>B</maker> | all.xml:3:3: this is not well-formed XML",
                "<camera><maker>B</maker></camera> | all.xml:2:9: this camera has no model, which each has in the lensfun database",
                "<camera><maker>B</maker><model>C</model><mount>D</mount><cropfactor>big</cropfactor></camera>"
                        + " | the cropfactor of this camera reads 'big'; it is a number within what is possible",
                "<camera><maker>B</maker><model>C</model><mount>D</mount><cropfactor>99</cropfactor></camera>"
                        + " | the cropfactor of this camera reads '99.0'; it is a number within what is possible",
                "<lens><model>C</model><focal value='-3'/></lens> | the focal of this lens reads '-3.0'",
                "<lens><model>C &secret;</model></lens> | all.xml:2:",
            })
    void badXmlIsOneMessageWithItsPlace(String entry, String message) {
        assertThatThrownBy(() -> read(entry)).isInstanceOf(BadInput.class).hasMessageContaining(message);
    }

    @Test
    void nothingOutsideTheFileIsReadAndNoEntityExpanded() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret.txt"), "Thornel 35mm");
        Files.writeString(
                folder.resolve("all.xml"),
                "<!DOCTYPE lensdatabase [<!ENTITY secret SYSTEM \"" + secret.toUri() + "\">]>\n"
                        + "<lensdatabase><lens><maker>B</maker><model>&secret;</model></lens></lensdatabase>\n");
        assertThatThrownBy(() -> Lensfun.read(folder))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("all.xml:")
                .hasMessageNotContaining("Thornel");
    }

    /** Some editions of the database name their document type; it is passed over. */
    @Test
    void aDocumentTypeIsPassedOver() throws IOException {
        Files.writeString(folder.resolve("all.xml"), """
                <?xml version="1.0"?>
                <!DOCTYPE lensdatabase SYSTEM "nowhere.dtd">
                <lensdatabase><lens><maker>B</maker><model>30mm</model></lens></lensdatabase>
                """);
        assertThat(Lensfun.read(folder).lenses()).isEqualTo(1);
    }

    @Test
    void aFolderWithoutItIsSaid() throws IOException {
        assertThatThrownBy(() -> Lensfun.read(folder))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("no file of the lensfun database");
        Files.writeString(folder.resolve("a.xml"), "<books/>");
        assertThatThrownBy(() -> Lensfun.read(folder))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("a.xml:1:")
                .hasMessageContaining("read the element 'books'");
    }
}
