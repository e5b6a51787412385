package akin.engine.report.lut;

import akin.model.look.Cube;
import akin.model.look.LookTable;
import java.io.IOException;
import java.util.List;

/** A cube as the common text format for devices: comments, its size, then three numbers a line with red fastest. */
public final class CubeFile {

    /** Columns of a comment: some devices read short lines only. */
    private static final int WIDTH = 100;

    private CubeFile() {}

    /**
     * Writes the file.
     *
     * @param unit name of the unit, which may be any text
     */
    public static void write(String unit, LookTable table, Cube cube, Appendable out) throws IOException {
        for (String note : LutNotes.head(unit, table)) {
            comment(note, out);
        }
        out.append("TITLE \"")
                .append(LutNotes.plain(unit + " " + table.encoding().id() + " to "
                        + table.look().viewing().encoding().id()))
                .append("\"\nLUT_3D_SIZE ")
                .append(String.valueOf(cube.size()))
                .append('\n');
        for (int i = 0; i < cube.count(); i++) {
            Decimals.millionths(cube.millionths(i), out);
            out.append(i % 3 == 2 ? '\n' : ' ');
        }
    }

    private static void comment(String note, Appendable out) throws IOException {
        StringBuilder line = new StringBuilder("#");
        for (String word : List.of(note.split(" ", -1))) {
            if (line.length() + word.length() >= WIDTH && line.length() > 1) {
                out.append(line).append('\n');
                line.setLength(1);
            }
            line.append(' ').append(word);
        }
        out.append(line).append('\n');
    }
}
