package akin.engine.equip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import akin.engine.read.Binder;
import akin.model.colour.Chart;
import akin.model.colour.ColourDifference;
import akin.model.colour.Lab;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ChartsTest {

    private static final Path PUBLISHED =
            Path.of("..", "model", "src", "test", "resources", "akin", "published", "chart-24.csv");

    private final Map<String, Chart> charts = Charts.packaged(new Binder());

    // The chart's maker (2016), as stored in colour-science: L*a*b* under D50, and the same as xyY.
    @Test
    void bothEditionsAreAsPublished() throws IOException {
        int compared = 0;
        for (String line : Files.readAllLines(PUBLISHED)) {
            String[] cells = line.split(",", -1);
            if (cells[0].equals("edition")) {
                continue;
            }
            Chart chart = charts.get(cells[0].startsWith("before") ? "before-november-2014" : "after-november-2014");
            Chart.Patch patch = chart.patches().get(Integer.parseInt(cells[1]) - 1);
            assertThat(cells[2]).startsWith(patch.name());
            assertThat(patch.lab()).isEqualTo(new Lab(number(cells[3]), number(cells[4]), number(cells[5])));
            double[] xyz = patch.xyz();
            double sum = xyz[0] + xyz[1] + xyz[2];
            assertThat(xyz[0] / sum).as(line).isCloseTo(number(cells[6]), within(1e-5));
            assertThat(xyz[1] / sum).as(line).isCloseTo(number(cells[7]), within(1e-5));
            assertThat(xyz[1]).as(line).isCloseTo(number(cells[8]), within(2e-6));
            Lab back = Lab.of(xyz, Chart.white());
            assertThat(back.l()).isCloseTo(patch.lab().l(), within(1e-9));
            assertThat(back.a()).isCloseTo(patch.lab().a(), within(1e-9));
            assertThat(back.b()).isCloseTo(patch.lab().b(), within(1e-9));
            compared++;
        }
        assertThat(compared).isEqualTo(2 * Chart.PATCHES);
    }

    // Computed with colour-science 0.4.6: mean 0.848, most 1.951, at the white patch.
    @Test
    void theTwoEditionsAreFarEnoughApartToTell() {
        List<Double> apart = new ArrayList<>();
        for (int i = 0; i < Chart.PATCHES; i++) {
            apart.add(ColourDifference.ciede2000(
                    charts.get("before-november-2014").patches().get(i).lab(),
                    charts.get("after-november-2014").patches().get(i).lab()));
        }
        assertThat(apart.stream().mapToDouble(d -> d).average().orElseThrow()).isCloseTo(0.848, within(1e-3));
        assertThat(apart.stream().mapToDouble(d -> d).max().orElseThrow()).isCloseTo(1.951, within(1e-3));
        assertThat(apart.get(Chart.FIRST_GREY)).isCloseTo(1.951, within(1e-3));
    }

    private static double number(String text) {
        return Double.parseDouble(text);
    }
}
