package akin.engine.read;

import java.util.ArrayList;
import java.util.List;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvReadFeature;

/** Reads comma-separated values (RFC 4180) into rows of cells that know where they stand. */
final class CsvRows {

    private final String text;
    private int at;
    private int line = 1;
    private int column = 1;
    private int points;

    private CsvRows(String text) {
        this.text = text;
    }

    /** A cell, without space around it. */
    record Cell(String text, Place place) {}

    /**
     * The rows that have anything in them, in order; none is without a cell.
     *
     * @param most how many rows there may be
     * @param kind what the rows are, in words
     * @throws BadInput with the place, when it cannot be read or has too many rows
     */
    static List<List<Cell>> of(String file, String text, int most, String kind) {
        // The mark of a byte order is no part of the first cell.
        int mark = text.startsWith(YamlReader.MARK) ? 1 : 0;
        return new CsvRows(text.substring(mark)).rows(file, most, kind);
    }

    private List<List<Cell>> rows(String file, int most, String kind) {
        List<List<Cell>> rows = new ArrayList<>();
        CsvMapper mapper =
                CsvMapper.builder().enable(CsvReadFeature.WRAP_AS_ARRAY).build();
        JsonParser csv = mapper.reader().createParser(text);
        try (csv) {
            csv.nextToken();
            while (csv.nextToken() == JsonToken.START_ARRAY) {
                List<Cell> row = new ArrayList<>();
                while (csv.nextToken() != JsonToken.END_ARRAY) {
                    int start = (int) csv.currentTokenLocation().getCharOffset();
                    row.add(new Cell(csv.getString().strip(), place(start)));
                }
                if (row.stream().anyMatch(cell -> !cell.text().isEmpty())) {
                    rows.add(List.copyOf(row));
                }
                if (rows.size() > most) {
                    throw new BadInput(file, row.get(0).place(), "more than " + most + " " + kind + " in one table");
                }
            }
        } catch (JacksonException e) {
            throw new BadInput(
                    file,
                    place((int) csv.currentTokenLocation().getCharOffset()),
                    "the quotation mark that opens here is not closed where the cell ends, so this is no comma-separated"
                            + " table; a cell with quotation marks or commas stands in quotation marks, and its own are"
                            + " doubled");
        }
        return rows;
    }

    /** Where the character of that index stands; asked in order. */
    private Place place(int index) {
        while (at < Math.min(index, text.length())) {
            int c = text.codePointAt(at);
            at += Character.charCount(c);
            points++;
            line += c == '\n' ? 1 : 0;
            column = c == '\n' ? 1 : column + 1;
        }
        return new Place(line, column, points, points);
    }
}
