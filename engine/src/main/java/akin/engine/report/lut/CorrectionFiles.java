package akin.engine.report.lut;

import akin.model.derived.Correction;
import akin.model.tone.Encoding;
import java.io.IOException;
import java.util.List;

/** A correction as the files that post loads: Common LUT Format, and the ASC Color Decision List (version 1.2). */
public final class CorrectionFiles {

    private CorrectionFiles() {}

    private static String basis(Correction correction) {
        return switch (correction.basis()) {
            case CHART -> "the 24 patches of both";
            case NEUTRAL -> "one neutral of both: exposure and white alone";
            case WHITE -> "neutrals of unlike reflectance: white alone, exposure stays as it was shot";
            case GREY -> "the grey level of both: exposure alone";
        };
    }

    /** From the unit's recorded codes to the hero's: decoded, the matrix, encoded as the hero records. */
    public static void clf(Correction correction, String id, Appendable out) throws IOException {
        Encoding from = correction.from();
        Encoding to = correction.to();
        List<String> notes = List.of(
                "Akin: correction of unit " + correction.unit() + " to unit " + correction.hero() + ", from "
                        + basis(correction) + ".",
                "Takes and gives code values, 0 to 1 from the lowest to the highest code.");
        Clf.write(
                id,
                notes,
                from.name() + " of unit " + correction.unit(),
                to.name() + " as of unit " + correction.hero(),
                clf -> {
                    clf.curve("decode", from::decode);
                    clf.matrix("correct", correction.matrix(), 0);
                    clf.curveOfLight("encode", light -> finite(to.encode(light)));
                },
                out);
    }

    /** A curve may have no value far under black; the file needs one. */
    private static double finite(double code) {
        return Double.isFinite(code) ? code : 0;
    }

    /**
     * Slope and offset of codes, for pictures that are in the hero's encoding and gamut already. It holds exposure and white;
     * colours that a matrix would move stay.
     */
    public static void cdl(Correction correction, String id, Appendable out) throws IOException {
        out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<ColorDecisionList xmlns=\"urn:ASC:CDL:v1.2\">\n");
        out.append("  <InputDescription>")
                .append(Clf.text("Code values of unit " + correction.unit() + ", converted to "
                        + correction.to().name() + " and the gamut of unit " + correction.hero()))
                .append("</InputDescription>\n");
        out.append("  <ColorDecision>\n    <ColorCorrection id=\"")
                .append(Clf.text(id))
                .append("\">\n      <SOPNode>\n        <Description>")
                .append(Clf.text("Akin: unit " + correction.unit() + " to unit " + correction.hero() + ", from "
                        + basis(correction)))
                .append("</Description>\n        <Slope>")
                .append(three(correction.slope()))
                .append("</Slope>\n        <Offset>")
                .append(three(correction.offset()))
                .append("</Offset>\n        <Power>1 1 1</Power>\n")
                .append("      </SOPNode>\n      <SatNode>\n        <Saturation>1</Saturation>\n      </SatNode>\n")
                .append("    </ColorCorrection>\n  </ColorDecision>\n</ColorDecisionList>\n");
    }

    private static String three(List<Double> values) {
        return String.join(" ", values.stream().map(Decimals::six).toList());
    }
}
