package akin.published;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Tables of published values kept beside the tests; their provenance is in the README next to them. */
public final class PublishedTable {
    private PublishedTable() {}

    /** One row, by column name. */
    public record Row(Map<String, String> cells) {
        public String text(String column) {
            return Objects.requireNonNull(cells.get(column), () -> "no column " + column + " in " + cells.keySet());
        }

        public double number(String column) {
            return Double.parseDouble(text(column));
        }

        @Override
        public String toString() {
            return String.join(" ", cells.values().stream().limit(3).toList());
        }
    }

    /** The rows of a comma-separated file with a header; never empty. */
    public static List<Row> read(String name) {
        String text;
        try (InputStream in = PublishedTable.class.getResourceAsStream(name)) {
            text = new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        List<String> lines = text.lines().filter(line -> !line.isBlank()).toList();
        List<String> header = split(lines.get(0));
        List<Row> rows = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            List<String> values = split(line);
            Map<String, String> cells = new LinkedHashMap<>();
            for (int i = 0; i < header.size(); i++) {
                cells.put(header.get(i), values.get(i));
            }
            rows.add(new Row(cells));
        }
        if (rows.isEmpty()) {
            throw new IllegalStateException(name + " has no rows");
        }
        return rows;
    }

    private static List<String> split(String line) {
        List<String> values = new ArrayList<>();
        StringBuilder value = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                values.add(value.toString());
                value.setLength(0);
            } else {
                value.append(c);
            }
        }
        values.add(value.toString());
        return values;
    }
}
