package akin.model.derived;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class DerivedTest {

    @Test
    void aFactIsCalledByItsWordsWithHyphens() {
        assertThat(Derived.nameOf(ExposureTime.class)).isEqualTo("exposure-time");
        assertThat(Derived.nameOf(View.class)).isEqualTo("view");
        assertThat(Derived.nameOf(NdPlan.class)).isEqualTo("nd-plan");
        assertThat(Derived.nameOf(FocusDepth.InScene.class)).isEqualTo("in-scene");
    }
}
