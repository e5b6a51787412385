package akin.engine.read;

import akin.engine.read.CsvRows.Cell;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads readings from comma-separated values (RFC 4180) into the tree that the YAML form gives, so that one reader judges
 * both:
 *
 * <pre>
 * chart,after-november-2014
 * precision,0.5 %
 * unit,patch,red,green,blue,noise
 * A,grey,41.2 %,41 %,40.8 %
 * A,black,9.3 %,,,0.3 %
 * A,1,...
 * </pre>
 *
 * Patches of the chart are numbered 1 to 24; one level alone, in the column red, is of brightness.
 */
public final class CsvReadings {

    private static final List<String> HEADER = List.of("unit", "patch", "red", "green", "blue", "noise");
    private static final List<String> SETTINGS = List.of("chart", "precision");
    private static final List<String> WORDS = List.of("grey", "white", "clip", "black");
    private static final int LEAST = 3;
    private static final int NOISE = 5;
    private static final int PATCHES = 24;
    private static final int MOST_ROWS = 10_000;

    private final String file;
    private final String text;

    private CsvReadings(String file, String text) {
        this.file = file;
        this.text = text;
    }

    /** The document of a text. */
    public static Document read(String file, String text) {
        if (text.codePointCount(0, text.length()) > YamlReader.LONGEST) {
            throw new BadInput(
                    file, "longer than the " + YamlReader.LONGEST + " characters a file of readings may have");
        }
        return new Document(file, text, new CsvReadings(file, text).root());
    }

    private Node root() {
        Map<String, Node.Field> root = new LinkedHashMap<>();
        root.put("akin-readings", field(new Node.Scalar("1", true, Place.START)));
        Map<String, Node.Field> units = new LinkedHashMap<>();
        Map<String, Map<Integer, Node>> patches = new LinkedHashMap<>();
        boolean header = false;
        for (List<Cell> row : CsvRows.of(file, text, MOST_ROWS, "lines")) {
            Cell first = row.get(0);
            if (header) {
                reading(row, units, patches);
            } else if (first.text().equals(HEADER.get(0))) {
                header(row);
                header = true;
            } else if (SETTINGS.contains(first.text()) && row.size() > 1) {
                if (root.put(first.text(), new Node.Field(first.place(), node(row.get(1)))) != null) {
                    throw new BadInput(file, first.place(), Say.quote(first.text()) + " stands here again");
                }
            } else {
                throw new BadInput(
                        file,
                        first.place(),
                        "read " + Say.quote(first.text()) + "; before the readings stand chart and precision, then the"
                                + " line " + String.join(",", HEADER) + "." + Say.nearest(first.text(), SETTINGS));
            }
        }
        if (!header) {
            throw new BadInput(file, Place.START, "the line " + String.join(",", HEADER) + " is missing");
        }
        patches.forEach((unit, of) -> fieldsOf(units, unit).put("patches", field(list(unit, of))));
        root.put("units", field(new Node.Fields(units, false, Place.START)));
        return new Node.Fields(root, false, Place.START);
    }

    private void header(List<Cell> row) {
        for (int i = 0; i < row.size() || i < LEAST; i++) {
            String read = i < row.size() ? row.get(i).text() : "";
            if (i >= HEADER.size() || !read.equals(HEADER.get(i))) {
                throw new BadInput(
                        file,
                        row.get(Math.min(i, row.size() - 1)).place(),
                        "the columns are " + String.join(",", HEADER) + "; of the last ones as many as are used");
            }
        }
    }

    private void reading(List<Cell> row, Map<String, Node.Field> units, Map<String, Map<Integer, Node>> patches) {
        if (row.size() < LEAST || row.size() > HEADER.size()) {
            throw new BadInput(
                    file,
                    row.get(0).place(),
                    "read " + row.size() + " cells; a line has " + String.join(",", HEADER)
                            + ", of the last ones as many as are used");
        }
        Cell unit = row.get(0);
        Cell patch = row.get(1);
        units.computeIfAbsent(
                unit.text(),
                name -> new Node.Field(unit.place(), new Node.Fields(new LinkedHashMap<>(), false, unit.place())));
        Node levels = levels(row);
        if (patch.text().matches("[0-9]{1,3}")) {
            int number = Integer.parseInt(patch.text());
            if (number < 1 || number > PATCHES) {
                throw new BadInput(file, patch.place(), "read " + number + "; the patches of the chart are 1 to 24");
            }
            if (patches.computeIfAbsent(unit.text(), name -> new LinkedHashMap<>())
                            .put(number, levels)
                    != null) {
                throw new BadInput(
                        file,
                        patch.place(),
                        "patch " + number + " of " + Say.quote(unit.text()) + " stands here again");
            }
            return;
        }
        if (!WORDS.contains(patch.text())) {
            throw new BadInput(
                    file,
                    patch.place(),
                    "read " + Say.quote(patch.text()) + "; a patch is " + String.join(", ", WORDS) + ", or 1 to 24."
                            + Say.nearest(patch.text(), WORDS));
        }
        Node value = patch.text().equals("black") ? black(row) : levels;
        if (fieldsOf(units, unit.text()).put(patch.text(), new Node.Field(patch.place(), value)) != null) {
            throw new BadInput(
                    file,
                    patch.place(),
                    Say.quote(patch.text()) + " of " + Say.quote(unit.text()) + " stands here again");
        }
    }

    private static Node levels(List<Cell> row) {
        List<Node> levels = new ArrayList<>();
        for (Cell cell : row.subList(2, Math.min(row.size(), NOISE))) {
            if (!cell.text().isEmpty()) {
                levels.add(node(cell));
            }
        }
        Place place = row.get(2).place();
        return levels.size() == 1 ? levels.get(0) : new Node.Items(levels, true, place);
    }

    private Node black(List<Cell> row) {
        Map<String, Node.Field> fields = new LinkedHashMap<>();
        fields.put("level", field(node(row.get(2))));
        if (row.size() > NOISE) {
            fields.put("noise", field(node(row.get(NOISE))));
        }
        return new Node.Fields(fields, true, row.get(2).place());
    }

    private Node list(String unit, Map<Integer, Node> of) {
        List<Node> items = new ArrayList<>();
        for (int number = 1; number <= PATCHES; number++) {
            Node levels = of.get(number);
            if (levels == null) {
                throw new BadInput(file, "patch " + number + " of " + Say.quote(unit) + " is missing; a chart has 24");
            }
            items.add(levels);
        }
        return new Node.Items(items, false, items.get(0).place());
    }

    private static Map<String, Node.Field> fieldsOf(Map<String, Node.Field> units, String unit) {
        Node.Field field = units.get(unit);
        if (field != null && field.value() instanceof Node.Fields fields) {
            return fields.fields();
        }
        throw new IllegalStateException(unit);
    }

    private static Node.Scalar node(Cell cell) {
        return new Node.Scalar(cell.text(), true, cell.place());
    }

    private static Node.Field field(Node value) {
        return new Node.Field(value.place(), value);
    }
}
