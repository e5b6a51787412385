package akin.model.derived;

import static org.assertj.core.api.Assertions.assertThat;

import akin.model.gear.Lens;
import akin.model.gear.Mode;
import akin.model.quantity.Area;
import akin.model.quantity.Length;
import akin.model.quantity.PictureSize;
import akin.model.rig.FittedLens;
import akin.model.rig.Knob;
import akin.model.rig.Rig;
import akin.model.rig.Settings;
import akin.model.rig.Unit;
import akin.published.SharedData;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a unit can be set to; that the plans told are those that there are is tested with the search. */
class RoomTest {

    private static LightRig.Draft draft(String name, double width, String focal) {
        LightRig.Draft draft = LightRig.draft(name);
        draft.mode.put("picture", new PictureSize(3840, 2160));
        draft.mode.put("area", new Area(width, width * 9 / 16));
        draft.lens.put("squeeze", 1.0);
        draft.focal = focal;
        return draft;
    }

    private static Room room(LightRig.Draft hero, LightRig.Draft other, Knob... keeps) {
        Unit unit = withMode(other);
        Rig rig = LightRig.rig(List.of(), hero.make(), unit);
        StartingPlan matched = new StartingPlan(rig, null, "B", SharedData::encoding, id -> null);
        return new Room(rig, unit, Set.of(keeps), matched, profile -> Settings.of(unit));
    }

    private static Unit withMode(LightRig.Draft draft) {
        draft.body.put("modes", Map.of("open", Sparse.of(Mode.class, draft.mode)));
        return draft.make();
    }

    private static List<Length> focals(Room room) {
        return room.turns(room.plan(), Knob.FOCAL).stream()
                .map(settings -> settings.lens().focal())
                .toList();
    }

    /** Arithmetic: 36 mm on 36 mm of width frames as 24 mm on 24 mm. */
    @Test
    void aZoomIsTriedAtItsEndsAndWhereItFramesAsTheHeroDoes() {
        Room room = room(draft("A", 36, "36 mm"), draft("B", 24, "50 mm"));
        assertThat(focals(room)).containsExactly(Length.parse("24 mm"), Length.parse("18 mm"), Length.parse("80 mm"));
    }

    @Test
    void theFocalLengthThatIsSetIsNotATurn() {
        Room room = room(draft("A", 36, "36 mm"), draft("B", 24, "80 mm"));
        assertThat(focals(room)).containsExactly(Length.parse("24 mm"), Length.parse("18 mm"));
        Settings wide = room.turns(room.plan(), Knob.FOCAL).get(1);
        assertThat(room.turns(wide, Knob.FOCAL))
                .extracting(settings -> settings.lens().focal())
                .containsExactly(Length.parse("80 mm"), Length.parse("24 mm"));
    }

    @Test
    void withoutWhatTheViewNeedsOnlyTheEndsAreTried() {
        LightRig.Draft bare = LightRig.draft("B");
        bare.focal = "50 mm";
        assertThat(focals(room(LightRig.draft("A"), bare)))
                .containsExactly(Length.parse("18 mm"), Length.parse("80 mm"));
    }

    @Test
    void aPrimeAndAKeptFocalLengthDoNotTurn() {
        LightRig.Draft prime = draft("B", 24, "35 mm");
        prime.lens.clear();
        prime.lens.putAll(
                Map.of("id", "prime", "squeeze", 1.0, "focal", Length.parse("35 mm"), "iris", Lens.Iris.STEPLESS));
        assertThat(focals(room(draft("A", 36, "36 mm"), prime))).isEmpty();
        Room kept = room(draft("A", 36, "36 mm"), draft("B", 24, "50 mm"), Knob.FOCAL);
        assertThat(kept.free(Knob.FOCAL)).isFalse();
        assertThat(kept.free(Knob.STOP)).isTrue();
        assertThat(kept.starts())
                .extracting(Settings::lens)
                .extracting(FittedLens::focal)
                .containsOnly(Length.parse("50 mm"));
        Room keptLens = room(draft("A", 36, "36 mm"), draft("B", 24, "50 mm"), Knob.LENS);
        assertThat(keptLens.free(Knob.FOCAL) || keptLens.free(Knob.STOP)).isFalse();
    }

    @Test
    void theHerosPictureIsAStart() {
        Room room = room(draft("A", 36, "36 mm"), draft("B", 24, "50 mm"));
        assertThat(room.starts().get(0)).isEqualTo(room.plan());
        assertThat(room.starts())
                .extracting(Settings::lens)
                .extracting(FittedLens::focal)
                .contains(Length.parse("24 mm"));
    }
}
