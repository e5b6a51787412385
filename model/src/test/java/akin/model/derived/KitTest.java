package akin.model.derived;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import akin.model.finding.Severity;
import akin.model.rig.Battery;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KitTest {

    /**
     * tsa.gov, "Lithium batteries with 100 watt hours or less in a device": up to 100 Wh. Copies of the same authority's
     * text: 101 to 160 Wh with airline approval, two spares at most.
     */
    @ParameterizedTest
    @CsvSource({
        "100, 6, false, ADVICE",
        "101, 2, true, ADVICE",
        "160, 2, true, ADVICE",
        "160, 3, true, LOSSY",
        "161, 0, true, LOSSY"
    })
    void passengersCarryWhatIsPublished(double wattHours, int spares, boolean restricted, Severity severity) {
        FlightBattery battery = new FlightBattery("B", wattHours, spares);
        assertThat(battery.restricted()).isEqualTo(restricted);
        if (restricted) {
            assertThat(battery.severity()).isEqualTo(severity);
        }
    }

    /** Arithmetic: 98 Wh at 30 W, a fifth kept: 2.6133 hours. */
    @Test
    void aBatteryLastsItsEnergyOverThePower() {
        BatteryLife life = new BatteryLife("B", 98, 30, 156);
        assertThat(life.lastsMinutes(20)).isCloseTo(156.8, within(1e-9));
        assertThat(life.tooShort(20)).isFalse();
        assertThat(new BatteryLife("B", 98, 30, 157).tooShort(20)).isTrue();
        assertThat(new BatteryLife("B", 98, 0, 157).tooShort(20)).isFalse();
    }

    @Test
    void aSpareIsLeftOfTheRating() {
        assertThat(new Payload("B", 4, 5).tooHeavy(20)).isFalse();
        assertThat(new Payload("B", 4.01, 5).tooHeavy(20)).isTrue();
        assertThat(new Payload("B", 4.01, 5).words()).contains("within its rating");
        assertThat(new Payload("B", 5.01, 5).words()).contains("more than it is rated for");
    }

    @Test
    void currentFollowsFromPowerAndVoltage() {
        assertThat(new PowerNeed("B", 72, 60, 14.4).current()).isEqualTo("5.0 A at 14.4 V");
        assertThat(new PowerNeed("B", 72, 60, null).current()).contains("not planned");
        assertThat(new PowerNeed("B", 72, 72, null).tooMuch()).isFalse();
        assertThat(new PowerNeed("B", 72.1, 72, null).tooMuch()).isTrue();
    }

    @Test
    void forgetfulDevicesAreNamed() {
        assertThat(new PowerUp("B", List.of("Small", "Box")).words()).isEqualTo("Small and Box");
        assertThat(new PowerUp("B", List.of()).forgetful()).isFalse();
        assertThatThrownBy(() -> new Battery(null, null, null, -1, null)).hasMessageContaining("0 or more");
    }
}
