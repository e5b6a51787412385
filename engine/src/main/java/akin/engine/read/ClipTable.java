package akin.engine.read;

import akin.engine.read.CsvRows.Cell;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Reads a table of clips: comma-separated values (RFC 4180) with a first line that names the columns of {@link ClipSheet}, in
 * any order, and a line for each clip. An empty cell is something that is not known.
 */
public final class ClipTable {

    private static final int MOST_CLIPS = 10_000;

    private ClipTable() {}

    /**
     * The clips of a table, in its order.
     *
     * @throws BadInput with the line, when it cannot be read
     */
    public static List<ClipSheet> read(String name, String text) {
        List<List<Cell>> rows = CsvRows.of(name, text, MOST_CLIPS, "clips");
        if (rows.size() < 2) {
            throw new BadInput(
                    name,
                    "a table of clips has a first line that names the columns, and a line for each clip; columns: "
                            + String.join(", ", ClipSheet.COLUMNS));
        }
        List<Cell> head = rows.get(0);
        List<String> columns =
                head.stream().map(cell -> cell.text().toLowerCase(Locale.ROOT)).toList();
        for (int i = 0; i < columns.size(); i++) {
            if (columns.subList(0, i).contains(columns.get(i))) {
                throw new BadInput(
                        name, head.get(i).place(), "the column " + Say.quote(columns.get(i)) + " stands there twice");
            }
        }
        if (!columns.contains(ClipSheet.CLIP)) {
            throw new BadInput(
                    name,
                    head.get(0).place(),
                    "the column 'clip' is missing." + " Read " + Say.list(columns) + "; columns: "
                            + String.join(", ", ClipSheet.COLUMNS));
        }
        List<ClipSheet> clips = new ArrayList<>();
        for (List<Cell> row : rows.subList(1, rows.size())) {
            if (row.size() > columns.size()) {
                throw new BadInput(
                        name,
                        row.get(columns.size()).place(),
                        "read " + row.size() + " cells; the first line names " + columns.size() + " columns");
            }
            Map<String, String> cells = new LinkedHashMap<>();
            for (int i = 0; i < columns.size(); i++) {
                cells.put(columns.get(i), i < row.size() ? row.get(i).text() : "");
            }
            clips.add(ClipSheet.strict(
                    cells,
                    (column, problem) ->
                            new BadInput(name, place(columns.indexOf(column), column, head, row), problem)));
        }
        return List.copyOf(clips);
    }

    /** Where a column is wrong: in the row, or in the first line when no such column is known. */
    private static Place place(int index, String column, List<Cell> head, List<Cell> row) {
        if (!ClipSheet.COLUMNS.contains(column)) {
            return head.get(Math.max(0, index)).place();
        }
        return row.get(index >= 0 && index < row.size() ? index : 0).place();
    }
}
