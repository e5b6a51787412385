package akin.model.derived;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import akin.model.gear.Codec;
import akin.model.rig.Unit;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class SyncFactsTest {

    /** Arithmetic: 1 ppm in 24 hours at 24 frames a second is 2.0736 frames. */
    @Test
    void clocksDriftByTheSumOfBoth() {
        ClockDrift a = new ClockDrift("A", 0.4, 24, 24);
        ClockDrift b = new ClockDrift("B", 0.6, 24, 24);
        assertThat(b.framesFrom(a)).isCloseTo(2.0736, within(1e-9));
        assertThat(b.framesFrom(a)).isEqualTo(a.framesFrom(b));
        assertThat(b.hoursUntil(2.0736, a)).isCloseTo(24, within(1e-9));
        assertThat(b.fixes(0.5, a).get(0).edits().get(0).to()).isEqualTo("347 min");
    }

    @Test
    void clocksOfWhichNothingIsPlannedAreNotLookedAt() {
        var rig =
                PlannedRig.at("25").shutter("180°", null).shutter("180°", null).rig();
        for (Unit unit : rig.units()) {
            assertThat(TimecodeFeed.derive(rig, unit)).isEmpty();
            assertThat(ClockSetting.derive(rig, unit)).isEmpty();
            assertThat(ClockDrift.derive(rig.production(), unit)).isEmpty();
            assertThat(SoundRate.derive(rig, unit)).isEmpty();
            assertThat(WrittenData.derive(unit)).isEmpty();
            assertThat(MediaRoom.derive(rig, unit)).isEmpty();
            assertThat(ClipNames.derive(rig, unit)).isEmpty();
        }
    }

    @Test
    void zonesAreComparedByTheTimeTheyShow() {
        ClockSetting utc = zone("UTC");
        assertThat(utc.differs(zone("UTC+00:00"))).isFalse();
        assertThat(utc.differs(zone("UTC-00:00"))).isFalse();
        assertThat(utc.differs(zone("UTC+00:30"))).isTrue();
        assertThat(zone("UTC+01:00").differs(zone("UTC-01:00"))).isTrue();
        assertThat(zone("UTC+19:30").differs(zone("UTC+19:30"))).isFalse();
    }

    @Test
    void datesAreComparedByTheDayAndNothingWithWhatIsNotKnown() {
        ClockSetting fifth = new ClockSetting("A", "UTC", LocalDate.of(2027, 3, 5));
        ClockSetting alsoFifth = new ClockSetting("B", null, LocalDate.of(2027, 3, 5));
        ClockSetting sixth = new ClockSetting("B", "UTC+01:00", LocalDate.of(2027, 3, 6));
        assertThat(fifth.apart(alsoFifth)).isEmpty();
        assertThat(alsoFifth.apart(fifth)).isEmpty();
        assertThat(alsoFifth.apart(sixth)).containsExactly("clock-date");
        assertThat(sixth.apart(zone("UTC"))).containsExactly("clock");
        assertThat(zone("UTC").apart(sixth)).containsExactly("clock");
        assertThat(sixth.apart(fifth)).containsExactly("clock", "clock-date");
        assertThat(sixth.shown()).isEqualTo("2027-03-06 UTC+01:00");
        assertThat(alsoFifth.shown()).isEqualTo("2027-03-05");
    }

    private static ClockSetting zone(String zone) {
        return new ClockSetting("A", zone, null);
    }

    /** Arithmetic: 512 GB at 400 Mbit/s are 10240 s. */
    @Test
    void cardsHoldMinutes() {
        PlannedTakes takes = new PlannedTakes(148, "stage", "scenes.0.takes.longest", null, 297);
        MediaRoom room = new MediaRoom("B", 10240 / 60.0, 2, takes);
        assertThat(room.takeTooLong(15)).isFalse();
        assertThat(room.takeTooLong(16)).isTrue();
        assertThat(room.needed(15)).isEqualTo(3);
        assertThat(room.needed(14)).isEqualTo(2);
    }

    @Test
    void chromaIsASharePerSampleOfBrightness() {
        assertThat(ChromaDetail.share(codec("4:4:4"))).isEqualTo(1);
        assertThat(ChromaDetail.share(codec("4:2:2"))).isEqualTo(0.5);
        assertThat(ChromaDetail.share(codec("4:2:0"))).isEqualTo(0.25);
        assertThat(ChromaDetail.share(codec("4:1:1"))).isEqualTo(0.25);
        assertThat(ChromaDetail.share(codec("fine"))).isNull();
    }

    private static Codec codec(String chroma) {
        return new Codec("a", Codec.Kind.ENCODED, 10, chroma, null, null);
    }
}
