package akin.engine.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvReadFeature;

/**
 * Reads a table of clips: comma-separated values (RFC 4180) with a first line that names the columns of {@link ClipSheet}, in
 * any order, and a line for each clip. An empty cell is something that is not known.
 */
public final class ClipTable {

    private static final int MOST_CLIPS = 10_000;

    private ClipTable() {}

    /** A row with the line that it starts on. */
    private record Row(int line, List<String> cells) {
        boolean blank() {
            return cells.stream().allMatch(String::isBlank);
        }
    }

    /**
     * The clips of a table, in its order.
     *
     * @throws BadInput with the line, when it cannot be read
     */
    public static List<ClipSheet> read(String name, String text) {
        List<Row> rows = rows(name, text.startsWith(YamlReader.MARK) ? text.substring(1) : text);
        if (rows.size() < 2) {
            throw new BadInput(
                    name,
                    "a table of clips has a first line that names the columns, and a line for each clip; columns: "
                            + String.join(", ", ClipSheet.COLUMNS));
        }
        Row head = rows.get(0);
        List<String> columns = head.cells().stream()
                .map(cell -> cell.strip().toLowerCase(Locale.ROOT))
                .toList();
        for (int i = 0; i < columns.size(); i++) {
            if (columns.subList(0, i).contains(columns.get(i))) {
                throw at(name, head.line(), "the column " + Say.quote(columns.get(i)) + " stands there twice");
            }
        }
        if (!columns.contains(ClipSheet.CLIP)) {
            throw at(
                    name,
                    head.line(),
                    "the column 'clip' is missing." + " Read " + Say.list(columns) + "; columns: "
                            + String.join(", ", ClipSheet.COLUMNS));
        }
        List<ClipSheet> clips = new ArrayList<>();
        for (Row row : rows.subList(1, rows.size())) {
            if (row.cells().size() > columns.size()) {
                throw at(
                        name,
                        row.line(),
                        "read " + row.cells().size() + " cells; the first line names " + columns.size() + " columns");
            }
            Map<String, String> cells = new LinkedHashMap<>();
            for (int i = 0; i < columns.size(); i++) {
                cells.put(columns.get(i), i < row.cells().size() ? row.cells().get(i) : "");
            }
            clips.add(ClipSheet.strict(
                    cells,
                    (column, problem) ->
                            at(name, ClipSheet.COLUMNS.contains(column) ? row.line() : head.line(), problem)));
        }
        return List.copyOf(clips);
    }

    private static List<Row> rows(String name, String text) {
        List<Row> rows = new ArrayList<>();
        CsvMapper mapper =
                CsvMapper.builder().enable(CsvReadFeature.WRAP_AS_ARRAY).build();
        try (JsonParser csv = mapper.reader().createParser(text)) {
            csv.nextToken();
            while (csv.nextToken() == JsonToken.START_ARRAY) {
                int line = 0;
                List<String> cells = new ArrayList<>();
                while (csv.nextToken() != JsonToken.END_ARRAY) {
                    line = line == 0 ? csv.currentTokenLocation().getLineNr() : line;
                    cells.add(csv.getString());
                }
                Row row = new Row(Math.max(1, line), List.copyOf(cells));
                if (!row.blank()) {
                    rows.add(row);
                }
                if (rows.size() > MOST_CLIPS) {
                    throw new BadInput(name, "more than " + MOST_CLIPS + " clips in one table");
                }
            }
        } catch (JacksonException e) {
            TokenStreamLocation place = e.getLocation();
            throw at(
                    name,
                    place == null ? 1 : Math.max(1, place.getLineNr()),
                    "this is no comma-separated table; a cell with quotation marks or commas stands in quotation marks, and"
                            + " its own are doubled");
        }
        return rows;
    }

    private static BadInput at(String name, int line, String problem) {
        return new BadInput(name, new Place(line, 1, 0, 0), problem);
    }
}
