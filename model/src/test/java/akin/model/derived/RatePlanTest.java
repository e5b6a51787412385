package akin.model.derived;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import akin.model.finding.Edit;
import akin.model.gear.Rates;
import akin.model.quantity.FrameRate;
import akin.model.rig.Rig;
import java.util.List;
import org.junit.jupiter.api.Test;

class RatePlanTest {

    private static Rates rates(String... rates) {
        return new Rates(List.of(rates).stream().map(FrameRate::parse).toList(), null, null);
    }

    @Test
    void goesBackToTheProductionsRateWhereAllOfferIt() {
        Rig rig = PlannedRig.at("24000/1001")
                .rate("24", rates("23.976", "24"))
                .rate("23.976", rates("23.976", "24"))
                .rate("24", null)
                .rig();
        assertThat(RatePlan.together(rig).get(0).edits())
                .containsExactly(new Edit("units.A.rate", "24000/1001"), new Edit("units.C.rate", "24000/1001"));
        assertThat(RatePlan.cause(
                        rig.production(), rig.units().get(0), rig.units().get(1)))
                .isEqualTo("units.A.rate");
    }

    @Test
    void movesTheProductionToTheNearestRateThatAllOffer() {
        Rig rig = PlannedRig.at("24000/1001")
                .rate("24000/1001", rates("23.976", "25", "30"))
                .rate("25", rates("24", "25", "30"))
                .rig();
        assertThat(RatePlan.together(rig).get(0).edits())
                .containsExactly(new Edit("production.rate", "25"), new Edit("units.A.rate", "25"));
    }

    @Test
    void hasNoFixWhereNoRateIsCommon() {
        Rig rig = PlannedRig.at("24")
                .rate("24", rates("24"))
                .rate("25", rates("25"))
                .rig();
        assertThat(RatePlan.together(rig)).isEmpty();
    }

    @Test
    void leavesAloneWhatIsOffSpeedOnPurpose() {
        Rig rig = PlannedRig.at("24")
                .shutter("180°", null)
                .offSpeed("48", "180°", null)
                .rig();
        assertThat(RatePlan.apart(
                        rig.production(), rig.units().get(0), rig.units().get(1)))
                .isFalse();
        Playback playback =
                (Playback) Playback.derive(rig.production(), rig.units().get(1)).get(0);
        assertThat(playback.percentOfLife()).isEqualTo(50);
        assertThat(playback.stopsLost()).isEqualTo(1);
        assertThat(Playback.derive(rig.production(), rig.units().get(0))).isEmpty();
    }

    /** 24 on 25: 4.17 % faster, common practice and arithmetic. */
    @Test
    void tellsCleanConformsFromOthers() {
        assertThat(conform("25", "50").clean()).isTrue();
        assertThat(conform("50", "25").dropsEvenly()).isTrue();
        assertThat(conform("24000/1001", "30000/1001").clean()).isFalse();
        assertThat(conform("24000/1001", "30000/1001").dropsEvenly()).isFalse();
        assertThat(conform("24", "25").percentFaster()).isCloseTo(4.1667, within(1e-4));
        assertThat(conform("24", "24000/1001").percentFaster()).isCloseTo(-0.0999, within(1e-4));
    }

    private static Conform conform(String recorded, String delivered) {
        return new Conform("A", FrameRate.parse(recorded), FrameRate.parse(delivered));
    }
}
