package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.WhereFound;
import akin.model.quantity.Frequency;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import java.util.List;

/**
 * The sampling rate of a unit's sound. Only once it is planned for any unit.
 *
 * @param unitName name of the unit
 * @param rate the sampling rate
 */
public record SoundRate(String unitName, Frequency rate) implements Derived {

    /** The rate for sound with picture: AES5 (from memory). */
    private static final Frequency WITH_PICTURE = Frequency.parse("48 kHz");

    /** The fact, or what is missing for it. */
    public static List<Object> derive(Rig rig, Unit unit) {
        if (rig.units().stream().allMatch(one -> one.sync().soundRate() == null)) {
            return List.of();
        }
        Frequency known = unit.sync().soundRate();
        return Inputs.of(SoundRate.class, unit)
                .input(unit.path("sound.rate"), WhereFound.PLAN, known)
                .derive(() -> new SoundRate(unit.name(), requireNonNull(known)));
    }

    /** The rate that both should have: that for sound with picture where one has it, else the hero's. */
    public Frequency wanted(SoundRate hero) {
        return rate.equals(WITH_PICTURE) ? rate : hero.rate;
    }

    /** Name of the unit that has another. */
    public String oddOf(SoundRate hero) {
        return rate.equals(wanted(hero)) ? hero.unitName : unitName;
    }
}
