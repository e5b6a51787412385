package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.WhereFound;
import akin.model.gear.Profile;
import akin.model.quantity.Iso;
import akin.model.rig.Unit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Where a unit's ISO stands among the native ISOs of its profile in its mode.
 *
 * @param unitName name of the unit
 * @param iso the ISO set
 * @param bases native ISOs in rising order; empty when known to have none that matters
 */
public record IsoBases(String unitName, Iso iso, List<Iso> bases) implements Derived {

    /** Copies the list in rising order. */
    public IsoBases {
        bases = bases.stream().sorted(Comparator.comparingInt(Iso::value)).toList();
    }

    /** The place among the bases, or what is missing for it. */
    public static List<Object> derive(Unit unit) {
        return require(Inputs.of(IsoBases.class, unit), unit, unit.profile()).derive(() -> of(unit, unit.profile()));
    }

    /** Names what is needed of a unit that writes what this profile writes. */
    static Inputs require(Inputs inputs, Unit unit, @Nullable Profile profile) {
        inputs.setting("iso", unit.iso()).setting("profile", profile);
        if (profile != null) {
            inputs.body("profiles." + profile.id() + ".iso-bases", WhereFound.MANUAL, known(unit, profile));
        }
        return inputs;
    }

    static IsoBases of(Unit unit, @Nullable Profile profile) {
        return new IsoBases(
                unit.name(), requireNonNull(unit.iso()), requireNonNull(known(unit, requireNonNull(profile))));
    }

    /** The native ISOs of a unit in a profile, or null when not known. */
    static @Nullable List<Iso> known(Unit unit, Profile profile) {
        List<Iso> ofMode = unit.mode().isoBases();
        return ofMode == null ? profile.isoBases() : ofMode;
    }

    /**
     * The base that works at an ISO: the highest that is not above it, else the lowest. Bodies with two bases change over
     * when the ISO reaches the upper one. Common practice, no source. Without bases, the ISO itself.
     */
    public Iso working() {
        return bases.stream()
                .filter(base -> base.value() <= iso.value())
                .reduce((lower, higher) -> higher)
                .orElse(bases.isEmpty() ? iso : bases.get(0));
    }

    /** The base nearest in stops, the lower of two equally near; empty when there is none. */
    public Optional<Iso> nearest() {
        return bases.stream().min(Comparator.comparingDouble(base -> Math.abs(iso.stopsFrom(base))));
    }

    /** How far the ISO is from the nearest base, in stops, negative below it; 0 without bases. */
    public double stopsOff() {
        return nearest().map(iso::stopsFrom).orElse(0.0);
    }

    /** How far the ISO is over the base that works at it, in stops: highlights gain them, shadows lose them. */
    public double shift() {
        return iso.stopsFrom(working());
    }

    /** The bases in words. */
    public String words() {
        return String.join(" and ", bases.stream().map(Iso::toString).toList());
    }
}
