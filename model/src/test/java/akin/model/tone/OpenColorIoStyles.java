package akin.model.tone;

import akin.model.colour.Adaptation;
import akin.model.colour.Gamut;
import akin.model.colour.RgbMatrix;
import java.util.Arrays;
import java.util.Map;

/** OpenColorIO's built-in transforms, by style name, put together from the shipped encodings and gamuts. */
final class OpenColorIoStyles {
    private OpenColorIoStyles() {}

    /** In that library linear 1 is 100 cd/m2 for the PQ curve. */
    private static final double PQ_UNIT = 100;

    static double[] apply(String style, double[] in, Map<String, Encoding> encodings, Map<String, Gamut> gamuts) {
        return switch (style) {
            case "CURVE - ACEScct-LOG_to_LINEAR" -> decode(encodings.get("acescct"), in);
            case "CURVE - APPLE_LOG_to_LINEAR" -> decode(encodings.get("apple-log"), in);
            case "CURVE - CANON_CLOG2_to_LINEAR" -> decode(encodings.get("canon-log-2"), in);
            case "CURVE - CANON_CLOG3_to_LINEAR" -> decode(encodings.get("canon-log-3"), in);
            case "CURVE - ST-2084_to_LINEAR" -> decodeSignal(encodings.get("pq"), in, 203 / PQ_UNIT);
            case "CURVE - LINEAR_to_ST-2084" -> encodeSignal(encodings.get("pq"), in, PQ_UNIT / 203);
            // That library's HLG curve is scaled so that a signal of 0.5 is light 0.25, three times the standard's.
            case "CURVE - HLG-OETF-INVERSE" -> decodeSignal(encodings.get("hlg"), in, 3 * 0.265);
            case "CURVE - HLG-OETF" -> encodeSignal(encodings.get("hlg"), in, 1 / (3 * 0.265));
            case "DISPLAY - CIE-XYZ-D65_to_REC.1886-REC.709" ->
                encodeSignal(
                        encodings.get("bt1886"),
                        RgbMatrix.toXyz(gamuts.get("bt709")).inverse().times(in),
                        1);
            case "ACEScg_to_ACES2065-1" ->
                RgbMatrix.between(gamuts.get("acescg"), gamuts.get("aces2065-1"), Adaptation.CAT02)
                        .times(in);
            default -> toAces(style, in, encodings, gamuts);
        };
    }

    private static double[] toAces(
            String style, double[] in, Map<String, Encoding> encodings, Map<String, Gamut> gamuts) {
        record Parts(String encoding, String gamut, Adaptation adaptation) {}
        Parts parts = switch (style) {
            case "ACEScct_to_ACES2065-1" -> new Parts("acescct", "acescg", Adaptation.CAT02);
            case "ACEScc_to_ACES2065-1" -> new Parts("acescc", "acescg", Adaptation.CAT02);
            case "APPLE_LOG_to_ACES2065-1" -> new Parts("apple-log", "bt2020", Adaptation.BRADFORD);
            case "ARRI_ALEXA-LOGC-EI800-AWG_to_ACES2065-1" ->
                new Parts("arri-logc3-ei800", "arri-wide-gamut-3", Adaptation.CAT02);
            case "ARRI_LOGC4_to_ACES2065-1" -> new Parts("arri-logc4", "arri-wide-gamut-4", Adaptation.CAT02);
            case "CANON_CLOG2-CGAMUT_to_ACES2065-1" -> new Parts("canon-log-2", "cinema-gamut", Adaptation.CAT02);
            case "CANON_CLOG3-CGAMUT_to_ACES2065-1" -> new Parts("canon-log-3", "cinema-gamut", Adaptation.CAT02);
            case "RED_LOG3G10-RWG_to_ACES2065-1" -> new Parts("red-log3g10", "red-wide-gamut-rgb", Adaptation.BRADFORD);
            case "SONY_SLOG3-SGAMUT3_to_ACES2065-1" -> new Parts("sony-s-log3", "s-gamut3", Adaptation.CAT02);
            case "SONY_SLOG3-SGAMUT3.CINE_to_ACES2065-1" -> new Parts("sony-s-log3", "s-gamut3-cine", Adaptation.CAT02);
            default -> throw new IllegalArgumentException("unknown style " + style);
        };
        double[] linear = decode(encodings.get(parts.encoding()), in);
        double[] aces = RgbMatrix.between(gamuts.get(parts.gamut()), gamuts.get("aces2065-1"), parts.adaptation())
                .times(linear);
        if (parts.encoding().equals("acescc")) {
            // That transform ends by clamping negative light, which is no part of the curve.
            Arrays.setAll(aces, i -> Math.max(0, aces[i]));
        }
        return aces;
    }

    private static double[] decode(Encoding encoding, double[] in) {
        return new double[] {encoding.decode(in[0]), encoding.decode(in[1]), encoding.decode(in[2])};
    }

    private static double[] decodeSignal(Encoding encoding, double[] signal, double unit) {
        double[] out = new double[3];
        for (int i = 0; i < 3; i++) {
            out[i] = encoding.decode(SignalLevel.legalToFull(signal[i])) * unit;
        }
        return out;
    }

    private static double[] encodeSignal(Encoding encoding, double[] light, double unit) {
        double[] out = new double[3];
        for (int i = 0; i < 3; i++) {
            out[i] = SignalLevel.fullToLegal(encoding.encode(light[i] * unit));
        }
        return out;
    }
}
