package akin.engine.report.lut;

import akin.model.colour.Matrix3;
import java.io.IOException;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Writes the Common LUT Format, version 3 (Academy S-2014-006, SMPTE ST 2136-1): a chain of steps in XML, each in floating
 * point.
 */
final class Clf {

    /** Samples of a curve over 0 to 1: between them a camera's curve is straight within a millionth. */
    static final int SAMPLES = 4096;

    private static final int HALVES = 65_536;
    private static final String STEP = " inBitDepth=\"32f\" outBitDepth=\"32f\"";

    private final Appendable out;

    private Clf(Appendable out) {
        this.out = out;
    }

    /** Something that writes the steps. */
    interface Steps {
        void to(Clf clf) throws IOException;
    }

    /**
     * Writes a file.
     *
     * @param id what tells it from others; letters, digits and hyphens
     * @param takes what goes in
     * @param gives what comes out
     */
    static void write(String id, List<String> notes, String takes, String gives, Steps steps, Appendable out)
            throws IOException {
        out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<ProcessList xmlns=\"urn:AMPAS:CLF:v3.0\" id=\"")
                .append(text(id))
                .append("\" name=\"")
                .append(text(id))
                .append("\" compCLFversion=\"3.0\">\n");
        for (String note : notes) {
            out.append("  <Description>").append(text(note)).append("</Description>\n");
        }
        out.append("  <InputDescriptor>").append(text(takes)).append("</InputDescriptor>\n");
        out.append("  <OutputDescriptor>").append(text(gives)).append("</OutputDescriptor>\n");
        steps.to(new Clf(out));
        out.append("</ProcessList>\n");
    }

    /** A curve of numbers from 0 to 1. */
    void curve(String id, DoubleUnaryOperator curve) throws IOException {
        out.append("  <LUT1D id=\"").append(id).append('"').append(STEP).append(">\n    <Array dim=\"");
        out.append(String.valueOf(SAMPLES)).append(" 1\">\n");
        for (int i = 0; i < SAMPLES; i++) {
            out.append(Decimals.eight(curve.applyAsDouble((double) i / (SAMPLES - 1))))
                    .append('\n');
        }
        out.append("    </Array>\n  </LUT1D>\n");
    }

    /** A curve of any numbers, sampled at each that 16 bits of floating point hold. */
    void curveOfLight(String id, DoubleUnaryOperator curve) throws IOException {
        out.append("  <LUT1D id=\"").append(id).append('"').append(STEP);
        out.append(" halfDomain=\"true\">\n    <Array dim=\"")
                .append(String.valueOf(HALVES))
                .append(" 1\">\n");
        for (int bits = 0; bits < HALVES; bits++) {
            out.append(Decimals.eight(curve.applyAsDouble(half(bits)))).append('\n');
        }
        out.append("    </Array>\n  </LUT1D>\n");
    }

    /** A matrix, and what is added afterwards to each channel. */
    void matrix(String id, Matrix3 matrix, double plus) throws IOException {
        out.append("  <Matrix id=\"").append(id).append('"').append(STEP).append(">\n    <Array dim=\"3 ");
        out.append(plus == 0 ? "3" : "4").append("\">\n");
        for (int row = 0; row < 3; row++) {
            for (int column = 0; column < 3; column++) {
                out.append(column == 0 ? "" : " ").append(Decimals.eight(matrix.at(row, column)));
            }
            out.append(plus == 0 ? "" : " " + Decimals.eight(plus)).append('\n');
        }
        out.append("    </Array>\n  </Matrix>\n");
    }

    /** The number that 16 bits stand for (IEEE 754 binary16); what is no number counts as 0, the infinite as the largest. */
    static double half(int bits) {
        int exponent = bits >> 10 & 0x1F;
        int fraction = bits & 0x3FF;
        double size;
        if (exponent == 0) {
            size = Math.scalb((double) fraction, -24);
        } else if (exponent < 31) {
            size = Math.scalb(1024.0 + fraction, exponent - 25);
        } else {
            size = fraction == 0 ? 65504 : 0;
        }
        return (bits & 0x8000) == 0 ? size : -size;
    }

    /** Text between tags or in quotes. */
    static String text(String text) {
        return LutNotes.plain(text)
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("'", "&apos;");
    }
}
