package akin.model.derived;

import static org.assertj.core.api.Assertions.assertThat;

import akin.model.quantity.AngularSpeed;
import akin.model.quantity.Length;
import akin.model.rig.Scene;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PlannedPanTest {

    private static Scene scene(double speed) {
        return new Scene(0, "yard", Length.parse("2 m"), Map.of(), null, new AngularSpeed(speed), null, List.of());
    }

    private static PlannedPan pan(String unit, double speed, double fastest) {
        return new PlannedPan(unit, scene(speed), speed, 1, 7, 1, fastest);
    }

    @Test
    void theGuidelineItselfIsNotTooFast() {
        assertThat(pan("A", 6, 6).tooFast()).isFalse();
        assertThat(pan("A", Math.nextUp(6.0), 6).tooFast()).isTrue();
    }

    @Test
    void theStrictestUnitSpeaksForTheScene() {
        assertThat(pan("A", 9, 6).worseIn(pan("B", 9, 5))).isTrue();
        assertThat(pan("A", 9, 6).worseIn(pan("B", 9, 6))).isFalse();
        assertThat(pan("B", 9, 6).worseIn(pan("A", 9, 6))).isTrue();
        assertThat(pan("A", 9, 6).worseIn(pan("B", 8, 5))).as("another scene").isFalse();
    }

    @Test
    void theSlowerPanKeepsToTheGuideline() {
        var slower = pan("A", 9, 6.19).fixes().get(0);
        assertThat(slower.edits().get(0).to()).isEqualTo("6.1 °/s");
    }

    @Test
    void noPanIsOfferedThatWouldStandStill() {
        assertThat(pan("A", 9, 0.04).fixes()).extracting("key").containsExactly("say-why");
    }
}
