package akin.model.derived;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import akin.model.finding.Fix;
import akin.model.finding.Missing;
import akin.model.gear.Codec;
import akin.model.gear.DataFlow;
import akin.model.quantity.DataRate;
import akin.model.quantity.FrameRate;
import akin.model.quantity.PictureSize;
import akin.model.rig.Recording;
import akin.model.rig.Unit;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class CompressionTest {

    private static final DataFlow FLOW =
            new DataFlow(new DataRate(220e6), PictureSize.parse("1920x1080"), FrameRate.parse("30000/1001"));

    /**
     * Arithmetic on a seen row of {@code prores-rates.csv}: 220 Mbit/s for 1920x1080 at 29.97, 10 bits, 4:2:2: 1243 Mbit/s
     * before, 5.65 to 1; at any picture and rate, since the codec's share of bits for a pixel is fixed.
     */
    @Test
    void theRatioIsBitsBeforeForEachBitAfter() {
        Codec codec = codec("a", Codec.Kind.ENCODED, "4:2:2", FLOW);
        assertThat(of(codec).ratio()).isCloseTo(5.65, within(0.005));
        LightRig.Draft large = draft(codec);
        large.mode.put("picture", PictureSize.parse("3840x2160"));
        large.unit.put("rate", FrameRate.parse("50"));
        assertThat(((Compression) Compression.derive(large.make()).get(0)).ratio())
                .isCloseTo(5.65, within(0.005));
    }

    @Test
    void samplesArePixelsOfRawAndThreeOfFullColour() {
        double encoded = of(codec("a", Codec.Kind.ENCODED, "4:2:2", FLOW)).ratio();
        assertThat(of(codec("a", Codec.Kind.RAW, null, FLOW)).ratio()).isCloseTo(encoded / 2, within(1e-9));
        assertThat(of(codec("a", Codec.Kind.ENCODED, "4:4:4", FLOW)).ratio()).isCloseTo(encoded * 3 / 2, within(1e-9));
        assertThat(of(codec("a", Codec.Kind.ENCODED, "4:2:0", FLOW)).ratio()).isCloseTo(encoded * 3 / 4, within(1e-9));
    }

    @Test
    void theGapIsInPerCentOfTheLesserAndTheSameBothWays() {
        Compression six = new Compression("A", Codec.Kind.ENCODED, 6);
        Compression nine = new Compression("B", Codec.Kind.ENCODED, 9);
        assertThat(six.apart(nine)).isEqualTo(50);
        assertThat(nine.apart(six)).isEqualTo(50);
        assertThat(six.strongerOf(nine)).isEqualTo("B");
        assertThat(nine.strongerOf(six)).isEqualTo("B");
        assertThat(six.weakerOf(nine)).isSameAs(six);
        assertThat(nine.weakerOf(six)).isSameAs(six);
    }

    @Test
    void whatIsNotKnownIsNamed() {
        assertThat(Compression.derive(
                        draft(codec("a", Codec.Kind.ENCODED, null, null)).make()))
                .extracting(fact -> ((Missing) fact).path())
                .containsExactly("gear.bodies.body-B.codecs.a.data.rate", "gear.bodies.body-B.codecs.a.chroma");
        LightRig.Draft draft = draft(codec("a", Codec.Kind.RAW, null, FLOW));
        draft.mode.remove("picture");
        assertThat(Compression.derive(draft.make()))
                .extracting(fact -> ((Missing) fact).path())
                .containsExactly("gear.bodies.body-B.modes.open.picture");
    }

    @Test
    void theNearestStepWithinTheLimitIsOffered() {
        Map<String, Codec> codecs = new TreeMap<>();
        for (int megabits : new int[] {60, 110, 160, 200}) {
            codecs.put("q" + megabits, codec("q" + megabits, Codec.Kind.ENCODED, "4:2:2", flow(megabits)));
        }
        codecs.put("raw", codec("raw", Codec.Kind.RAW, null, FLOW));
        codecs.put("unknown", codec("unknown", Codec.Kind.ENCODED, "4:2:2", null));
        LightRig.Draft draft = draft(codec("q60", Codec.Kind.ENCODED, "4:2:2", flow(60)));
        draft.body.put("codecs", codecs);
        Unit unit = draft.make();
        Compression wanted = of(codec("a", Codec.Kind.ENCODED, "4:2:2", flow(170)));
        assertThat(Compression.fixes(unit, wanted, 50)).extracting(Fix::key).containsExactly("nearer-step", "texture");
        assertThat(Compression.fixes(unit, wanted, 50).get(0).edits().get(0).to())
                .isEqualTo("q160");
        Compression rich = of(codec("a", Codec.Kind.ENCODED, "4:2:2", flow(900)));
        assertThat(Compression.fixes(unit, rich, 50)).extracting(Fix::key).containsExactly("texture");
    }

    private static DataFlow flow(int megabits) {
        return new DataFlow(new DataRate(megabits * 1e6), null, null);
    }

    private static Codec codec(String id, Codec.Kind kind, @Nullable String chroma, @Nullable DataFlow data) {
        return new Codec(id, kind, 10, chroma, data, null);
    }

    private static Compression of(Codec codec) {
        return (Compression) Compression.derive(draft(codec).make()).get(0);
    }

    private static LightRig.Draft draft(Codec codec) {
        LightRig.Draft draft = LightRig.draft("B");
        draft.mode.put("picture", PictureSize.parse("1920x1080"));
        draft.recording = new Recording(null, null, codec, null);
        return draft;
    }
}
