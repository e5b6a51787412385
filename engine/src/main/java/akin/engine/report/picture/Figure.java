package akin.engine.report.picture;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A drawing with what it shows in numbers.
 *
 * @param id a word that no other figure of the rig has
 * @param heading what it is about
 * @param caption how to read it
 * @param drawing the drawing; null when there is nothing that could be drawn
 * @param table the numbers
 * @param gaps what is not known, and so not drawn
 */
public record Figure(
        String id, String heading, String caption, @Nullable Drawing drawing, Table table, List<String> gaps) {

    /** Copies the list. */
    public Figure {
        gaps = List.copyOf(gaps);
    }

    /**
     * Numbers by unit.
     *
     * @param columns what the columns hold, after the first, which names the unit
     * @param rows a row for each unit
     */
    public record Table(List<String> columns, List<Row> rows) {

        /** Copies the lists. */
        public Table {
            columns = List.copyOf(columns);
            rows = List.copyOf(rows);
        }

        /** The whole table in sentences, for who cannot see the drawing. */
        public String words() {
            StringBuilder words = new StringBuilder();
            for (Row row : rows) {
                words.append(words.isEmpty() ? "" : " ")
                        .append("Unit ")
                        .append(row.ink().name());
                for (int i = 0; i < columns.size(); i++) {
                    words.append(i == 0 ? ": " : ", ")
                            .append(columns.get(i))
                            .append(' ')
                            .append(row.cells().get(i));
                }
                words.append('.');
            }
            return words.toString();
        }
    }

    /**
     * One unit's numbers.
     *
     * @param ink the unit as it is drawn
     * @param cells a cell for each column
     */
    public record Row(Ink ink, List<String> cells) {

        /** Copies the list. */
        public Row {
            cells = List.copyOf(cells);
        }
    }
}
