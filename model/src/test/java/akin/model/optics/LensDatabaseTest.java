package akin.model.optics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * Reads the lensfun database (CC BY-SA 3.0) where it is installed, to hold our crop arithmetic against its bodies.
 * Nothing of it is copied into the project.
 */
class LensDatabaseTest {
    private static final Path INSTALLED = Path.of("/usr/share/lensfun");

    /** An open standard that the database names as a mount; its picture area is 17.3 mm x 13.0 mm (klecker.de). */
    private static final String FOUR_THIRDS = "Micro 4/3 System";

    private static List<Element> databases = List.of();

    @BeforeAll
    static void read() throws IOException, ParserConfigurationException, SAXException {
        assumeTrue(Files.isDirectory(INSTALLED), "needs the lensfun database (Debian package liblensfun-data-v1)");
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        DocumentBuilder builder = factory.newDocumentBuilder();
        builder.setEntityResolver((publicId, systemId) -> new InputSource(new StringReader("")));
        List<Path> files;
        try (Stream<Path> tree = Files.walk(INSTALLED)) {
            files = tree.filter(file -> file.toString().endsWith(".xml"))
                    .sorted()
                    .toList();
        }
        List<Element> read = new ArrayList<>();
        for (Path file : files) {
            read.add(builder.parse(file.toFile()).getDocumentElement());
        }
        databases = List.copyOf(read);
    }

    @Test
    void everyCropFactorGivesADiagonalAndLeadsBack() {
        List<Element> cameras = all("camera");
        assertThat(cameras).hasSizeGreaterThan(500);
        for (Element camera : cameras) {
            double crop = Double.parseDouble(text(camera, "cropfactor"));
            double diagonal = FieldOfView.diagonalFromCrop(crop);
            // from a telephone's chip to a medium-format back
            assertThat(diagonal).as(text(camera, "model")).isBetween(4.0, 90.0);
            double width = FieldOfView.activeWidthFromCrop(crop, CropReference.DIAGONAL, 4 / 3.0);
            assertThat(FieldOfView.diagonal(width, width * 3 / 4)).isCloseTo(diagonal, within(1e-9));
            assertThat(FieldOfView.cropFactor(width, width * 3 / 4, CropReference.DIAGONAL))
                    .isCloseTo(crop, within(1e-9));
        }
    }

    @Test
    void bodiesOfOneStandardHaveThePublishedDiagonal() {
        List<Element> bodies = all("camera").stream()
                .filter(camera -> text(camera, "mount").equals(FOUR_THIRDS))
                .toList();
        assertThat(bodies).hasSizeGreaterThan(10);
        double published = FieldOfView.diagonal(17.3, 13.0);
        long agreeing = bodies.stream()
                .mapToDouble(body -> FieldOfView.diagonalFromCrop(Double.parseDouble(text(body, "cropfactor"))))
                .filter(diagonal -> Math.abs(diagonal - published) < 0.05)
                .count();
        // a few bodies of the standard carry a smaller chip
        assertThat(agreeing).isGreaterThan(bodies.size() * 9L / 10);
    }

    @Test
    void mountsAreDeclared() {
        Set<String> mounts = new TreeSet<>();
        all("mount").stream()
                .filter(mount -> mount.getElementsByTagName("name").getLength() > 0)
                .forEach(mount -> mounts.add(text(mount, "name")));
        assertThat(mounts).hasSizeGreaterThan(20).contains(FOUR_THIRDS);
        List<String> ofCameras =
                all("camera").stream().map(camera -> text(camera, "mount")).toList();
        assertThat(ofCameras).doesNotContain("");
        // by the database's own custom a fixed lens has a mount in lower case that it need not declare; one is
        // forgotten
        List<String> interchangeable = ofCameras.stream()
                .filter(mount -> !Character.isLowerCase(mount.charAt(0)))
                .toList();
        long declared = interchangeable.stream().filter(mounts::contains).count();
        assertThat(declared).isGreaterThan(interchangeable.size() * 9L / 10).isGreaterThan(200);
    }

    @Test
    void lensesNameTheirCrop() {
        List<Element> lenses = all("lens");
        assertThat(lenses).hasSizeGreaterThan(500);
        for (Element lens : lenses) {
            double crop = Double.parseDouble(text(lens, "cropfactor"));
            assertThat(FieldOfView.diagonalFromCrop(crop))
                    .as(text(lens, "model"))
                    .isBetween(4.0, 90.0);
        }
    }

    /** Elements that stand directly under the root: a camera's own mount is no mount declaration. */
    private static List<Element> all(String tag) {
        List<Element> found = new ArrayList<>();
        for (Element root : databases) {
            NodeList children = root.getChildNodes();
            for (int i = 0; i < children.getLength(); i++) {
                if (children.item(i) instanceof Element element
                        && element.getTagName().equals(tag)) {
                    found.add(element);
                }
            }
        }
        return found;
    }

    private static String text(Element parent, String tag) {
        NodeList found = parent.getElementsByTagName(tag);
        assertThat(found.getLength())
                .as("<%s> in <%s>", tag, parent.getTagName())
                .isPositive();
        return found.item(0).getTextContent().strip();
    }
}
