package akin.model.derived;

import static org.assertj.core.api.Assertions.assertThat;

import akin.model.gear.Codec;
import akin.model.gear.Mode;
import akin.model.gear.Rates;
import akin.model.quantity.FrameRate;
import akin.model.rig.Recording;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class AlternativesTest {

    private static final Rates HERE = new Rates(List.of(LightRig.RATE), null, null);
    private static final Rates ELSEWHERE = new Rates(List.of(FrameRate.parse("50")), null, null);

    private static Mode mode(String id, Object... facts) {
        Map<String, Object> named = new HashMap<>(Map.of("id", id, "rates", HERE));
        for (int i = 0; i < facts.length; i += 2) {
            named.put((String) facts[i], facts[i + 1]);
        }
        return Sparse.of(Mode.class, named);
    }

    private static List<String> others(Mode... modes) {
        LightRig.Draft draft = LightRig.draft("B");
        draft.recording = new Recording(null, null, new Codec("inside", null, 10, null, null, null), null);
        Map<String, Mode> all = new TreeMap<>();
        Arrays.stream(modes).forEach(mode -> all.put(mode.id(), mode));
        draft.body.put("modes", all);
        return Alternatives.modes(draft.make()).stream().map(Mode::id).toList();
    }

    @Test
    void theModeThatIsSetIsNoAlternative() {
        assertThat(others(mode("open"), mode("wide"), mode("fine"))).containsExactly("fine", "wide");
        assertThat(others(mode("open"))).isEmpty();
    }

    @Test
    void rateProfileAndCodecStay() {
        assertThat(others(
                        mode("open"),
                        mode("a", "rates", ELSEWHERE),
                        mode("b", "profiles", List.of("other")),
                        mode("c", "codecs", List.of("other")),
                        mode("d", "profiles", List.of("log"), "codecs", List.of("inside")),
                        Sparse.of(Mode.class, Map.of("id", "e"))))
                .containsExactly("d");
    }
}
