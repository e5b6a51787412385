package akin.model.derived;

import akin.model.gear.Codec;
import akin.model.gear.Connector;
import akin.model.gear.Input;
import akin.model.gear.Output;
import akin.model.quantity.FrameRate;
import akin.model.quantity.PictureSize;
import akin.model.rig.Unit;
import akin.model.timing.PictureTiming;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What an output sends: every fact known.
 *
 * @param connector standard of the connector
 * @param kind raw values or a developed picture
 * @param bits bits a sample
 * @param chroma chroma sampling of a developed picture; empty for raw values
 * @param picture pixels sent
 */
record LinkSignal(Connector connector, Codec.Kind kind, int bits, String chroma, PictureSize picture) {

    private static final double GIGA = 1e9;

    /** What an output of a unit sends, or null when a fact is not known. */
    static @Nullable LinkSignal of(Unit unit, Output output) {
        PictureSize picture = picture(unit, output);
        String chroma = output.kind() == Codec.Kind.RAW ? "" : output.chroma();
        return output.connector() == null
                        || output.kind() == null
                        || output.bits() == null
                        || chroma == null
                        || picture == null
                ? null
                : new LinkSignal(output.connector(), output.kind(), output.bits(), chroma, picture);
    }

    static @Nullable PictureSize picture(Unit unit, Output output) {
        return output.picture() == null ? unit.mode().picture() : output.picture();
    }

    /** Samples a pixel: one of raw values; of a developed picture one of brightness and its share of colour. */
    static double samples(String chroma) {
        return switch (chroma) {
            case "" -> 1;
            case "4:2:0", "4:1:1" -> 1.5;
            case "4:2:2" -> 2;
            case "4:4:4" -> 3;
            default -> throw new IllegalArgumentException("chroma sampling " + chroma);
        };
    }

    /** True for the words that {@link #samples} knows. */
    static boolean known(String chroma) {
        return List.of("", "4:2:0", "4:1:1", "4:2:2", "4:4:4").contains(chroma);
    }

    /**
     * Bits a second on the link, in Gbit/s. Of a developed picture over HDMI at a published timing all of its clock, blanking
     * included: 24 bits to a pixel, by bits / 8 for 4:4:4, half of that for 4:2:0, and for 4:2:2 as they are up to 12 bits (HDMI
     * 1.4b and 2.0, from memory). Otherwise the picture alone: width x height x bits x samples x rate.
     */
    double gigabits(FrameRate rate) {
        return timing(rate)
                .map(timing -> timing.megahertz(rate) * bitsOfPixel() / 1000)
                .orElseGet(() -> payload(rate));
    }

    /** How {@link #gigabits} comes about, in words. */
    String sum(FrameRate rate) {
        return timing(rate)
                .map(timing -> String.format(
                        Locale.ROOT,
                        "%d x %d pixels, blanking included, x %.0f bits x rate",
                        timing.pixels(),
                        timing.lines(),
                        bitsOfPixel()))
                .orElse("width x height x bits x samples x rate");
    }

    private Optional<PictureTiming> timing(FrameRate rate) {
        boolean clocked = connector.hdmi() && kind == Codec.Kind.ENCODED && (bits <= 12 || !chroma.equals("4:2:2"));
        return clocked ? PictureTiming.of(picture, rate) : Optional.empty();
    }

    private double bitsOfPixel() {
        return switch (chroma) {
            case "4:4:4" -> 3.0 * bits;
            case "4:2:2" -> 24;
            default -> 1.5 * bits;
        };
    }

    private double payload(FrameRate rate) {
        return picture.width() * (double) picture.height() * bits * samples(chroma) * rate.perSecond() / GIGA;
    }

    /** Why an input does not take it, in words; empty when it does. All its facts have to be known. */
    List<String> refusals(Input input) {
        List<String> why = new ArrayList<>();
        Connector plug = input.connector();
        if (plug != null && !plug.fits(connector)) {
            why.add("it is " + connector + " and the input is " + plug);
        }
        if (input.kinds() != null && !input.kinds().contains(kind)) {
            why.add("the input does not take " + (kind == Codec.Kind.RAW ? "raw values" : "a developed picture"));
        }
        if (input.bits() != null && bits > input.bits()) {
            why.add(bits + " bits are sent and " + input.bits() + " taken");
        }
        if (kind == Codec.Kind.ENCODED
                && input.chroma() != null
                && known(input.chroma())
                && samples(chroma) > samples(input.chroma())) {
            why.add(chroma + " is sent and " + input.chroma() + " taken");
        }
        PictureSize most = input.picture();
        if (most != null && (picture.width() > most.width() || picture.height() > most.height())) {
            why.add(picture + " is sent and " + most + " taken");
        }
        return why;
    }
}
