package akin.engine.equip;

import akin.engine.read.Binder;
import akin.engine.read.Document;
import akin.engine.read.Say;
import akin.engine.read.YamlReader;
import akin.model.colour.Chart;
import akin.model.colour.Lab;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads the data file of charts. */
public final class Charts {

    private static final String FILE = "charts.yaml";
    private static final int VERSION = 1;

    private Charts() {}

    /** The file as it is written. */
    record ChartsSheet(
            @JsonProperty(required = true) Integer akinCharts,
            @JsonProperty(required = true) List<ChartSheet> charts) {}

    /** A chart as it is written. */
    record ChartSheet(
            @JsonProperty(required = true) String id,
            @JsonProperty(required = true) String name,
            @JsonProperty(required = true) String source,
            @JsonProperty(required = true) List<PatchSheet> patches) {}

    /** A patch as it is written. */
    record PatchSheet(
            @JsonProperty(required = true) String name,
            @JsonProperty(required = true) Double l,
            @JsonProperty(required = true) Double a,
            @JsonProperty(required = true) Double b) {}

    /** The charts that come with Akin, by id, the newest last. */
    public static Map<String, Chart> packaged(Binder binder) {
        String text = new SharedData()
                .text(FILE)
                .orElseThrow(() -> new IllegalStateException("the file of charts is not packaged"));
        Document document = YamlReader.read(FILE, text);
        ChartsSheet sheet = binder.bind(document, ChartsSheet.class);
        if (sheet.akinCharts() != VERSION) {
            throw document.error("akin-charts", "a file of charts starts with akin-charts: " + VERSION);
        }
        Map<String, Chart> charts = new LinkedHashMap<>();
        for (ChartSheet chart : sheet.charts()) {
            try {
                charts.put(chart.id(), new Chart(chart.id(), chart.name(), patches(chart), chart.source()));
            } catch (IllegalArgumentException e) {
                throw document.error("charts." + charts.size(), Say.of(e));
            }
        }
        return charts;
    }

    private static List<Chart.Patch> patches(ChartSheet chart) {
        return chart.patches().stream()
                .map(patch -> new Chart.Patch(patch.name(), new Lab(patch.l(), patch.a(), patch.b())))
                .toList();
    }
}
