package akin.model.derived;

import static akin.model.derived.LightRig.filters;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import akin.model.quantity.NeutralDensity;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class NdPlanTest {

    @Test
    void oneFilterCannotStandInFrontOfTwoLenses() {
        Unit hero = with("A", filters("ND 0.6"), List.of());
        Unit other = with("B", filters("ND 0.6"), List.of());
        Rig rig = LightRig.rig(filters("ND 0.6", "ND 0.9"), hero, other);
        assertThat(plan(rig, hero).lacking()).isEmpty();
        assertThat(plan(rig, other).lacking()).containsExactlyElementsOf(filters("ND 0.6"));
        assertThat(plan(rig, other).lackingWords()).isEqualTo("ND 0.6");
        assertThat(plan(LightRig.rig(filters("ND 0.6", "ND 0.6"), hero, other), other)
                        .lacking())
                .isEmpty();
    }

    @Test
    void aBodyGivesOneOfItsOwnAtATime() {
        Unit hero = with("A", List.of(), List.of());
        Unit one = with("B", filters("ND 0.6", "ND 1.2"), filters("ND 0.6", "ND 1.2"));
        assertThat(plan(LightRig.rig(filters("ND 0.6"), hero, one), one).lacking())
                .isEmpty();
        assertThat(plan(LightRig.rig(List.of(), hero, one), one).lacking())
                .containsExactlyElementsOf(filters("ND 0.6"));
    }

    /** Filters are sold by factor too: ND4 is ND 0.6 to within 0.4 % (camera-wiki.org, Neutral density filter). */
    @Test
    void aFactorIsTheDensityItIsSoldAs() {
        Unit hero = with("A", List.of(), List.of());
        Unit other = with("B", filters("ND4"), List.of());
        assertThat(plan(LightRig.rig(filters("ND 0.6"), hero, other), other).lacking())
                .isEmpty();
    }

    @Test
    void withoutAKitListThereIsNothingToSayUnlessThereIsNothingToCarry() {
        Unit hero = with("A", List.of(), List.of());
        Unit other = with("B", filters("ND 0.6"), List.of());
        Rig rig = LightRig.rig(null, hero, other);
        assertThat(NdPlan.derive(rig, other)).noneMatch(NdPlan.class::isInstance);
        assertThat(plan(rig, hero).filters()).isEmpty();
    }

    /** Against every subset of the kit, by counting in binary. */
    @Test
    void noOtherSubsetComesNearer() {
        Random random = new Random(417);
        for (int round = 0; round < 300; round++) {
            List<NeutralDensity> kit = some(random, 7);
            List<NeutralDensity> own = some(random, 3);
            double wanted = random.nextDouble() * 12;
            Unit unit = with("B", List.of(), own);
            NdChoice choice = NdChoice.nearest(unit, kit, wanted);
            double best = Double.MAX_VALUE;
            for (int subset = 0; subset < 1 << kit.size(); subset++) {
                for (int internal = -1; internal < own.size(); internal++) {
                    List<NeutralDensity> stack = new ArrayList<>();
                    if (internal >= 0) {
                        stack.add(own.get(internal));
                    }
                    for (int i = 0; i < kit.size(); i++) {
                        if ((subset >> i & 1) == 1) {
                            stack.add(kit.get(i));
                        }
                    }
                    if (stack.size() <= 3) {
                        double stops = stack.stream()
                                .mapToDouble(NeutralDensity::stops)
                                .sum();
                        best = Math.min(best, Math.abs(stops - wanted) + 0.02 * stack.size());
                    }
                }
            }
            assertThat(Math.abs(choice.stops() - wanted)
                            + 0.02 * choice.filters().size())
                    .as("%s and %s for %s stops", kit, own, wanted)
                    .isCloseTo(best, within(1e-9));
        }
    }

    @Test
    void infraredIsAskedOnlyBehindDenseFilters() {
        LightRig.Draft draft = LightRig.draft("B");
        draft.body.remove("irCut");
        assertThat(cut(draft).polluted()).isFalse();
        draft.unit.put("filters", filters("ND 0.9", "ND 0.3"));
        assertThat(InfraredCut.derive(draft.make(), LightRig.tolerances())).noneMatch(InfraredCut.class::isInstance);
        draft.body.put("irCut", false);
        assertThat(cut(draft).polluted()).isTrue();
        assertThat(cut(draft).density()).isCloseTo(1.2, within(1e-9));
        draft.body.put("irCut", true);
        assertThat(cut(draft).polluted()).isFalse();
    }

    private static InfraredCut cut(LightRig.Draft draft) {
        return (InfraredCut)
                InfraredCut.derive(draft.make(), LightRig.tolerances()).get(0);
    }

    private static List<NeutralDensity> some(Random random, int most) {
        List<NeutralDensity> some = new ArrayList<>();
        for (int i = random.nextInt(most + 1); i > 0; i--) {
            some.add(new NeutralDensity((1 + random.nextInt(21)) / 10.0));
        }
        return some;
    }

    private static Unit with(String name, List<NeutralDensity> carried, List<NeutralDensity> internal) {
        LightRig.Draft draft = LightRig.draft(name);
        draft.unit.put("filters", carried);
        draft.body.put("internalNd", internal);
        return draft.make();
    }

    private static NdPlan plan(Rig rig, Unit unit) {
        return (NdPlan) NdPlan.derive(rig, unit).get(0);
    }

    /** Filters of one and of two measures are equally far from one and a half; the order of the van decides. */
    @Test
    void ofChoicesThatComeEquallyNearTheFirstIsTaken() {
        Unit unit = with("B", List.of(), List.of());
        List<NeutralDensity> van = filters("ND 1.2", "ND 2.4");
        double wanted = 1.5 * van.get(0).stops();
        assertThat(NdChoice.nearest(unit, van, wanted, 1).filters()).containsExactly(van.get(0));
        assertThat(NdChoice.nearest(unit, filters("ND 2.4", "ND 1.2"), wanted, 1)
                        .filters())
                .containsExactly(van.get(1));
    }
}
