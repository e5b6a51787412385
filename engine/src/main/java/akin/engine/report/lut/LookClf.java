package akin.engine.report.lut;

import akin.model.colour.Matrix3;
import akin.model.look.LookTable;
import java.io.IOException;

/**
 * A table as Common LUT Format. Every stage of the look is a step of that format, so between its samples the file is the
 * function itself, not a cube of it.
 */
public final class LookClf {

    /** Signals of the display before they are bent run from about -1 to 2; these bounds are never reached. */
    private static final double LOWEST = -2;

    private static final double SPAN = 5;

    private LookClf() {}

    /**
     * Writes the file.
     *
     * @param unit name of the unit, which may be any text
     * @param id what tells the file from others
     */
    public static void write(String unit, String id, LookTable table, Appendable out) throws IOException {
        Clf.write(
                id,
                LutNotes.head(unit, table),
                LutNotes.input(table),
                LutNotes.output(table),
                clf -> {
                    clf.curve("decode", table::decode);
                    clf.matrix("to-working-gamut", table.look().toWorking(table.gamut()), 0);
                    clf.curveOfLight("tone", table.look()::tone);
                    clf.matrix("to-display", scaled(table.look().toDisplay()), -LOWEST / SPAN);
                    clf.curve("display", v -> table.finish(LOWEST + SPAN * v));
                },
                out);
    }

    private static Matrix3 scaled(Matrix3 matrix) {
        double[] cells = new double[9];
        for (int i = 0; i < cells.length; i++) {
            cells[i] = matrix.at(i / 3, i % 3) / SPAN;
        }
        return Matrix3.ofRows(cells);
    }
}
