package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.Fix;
import akin.model.finding.Severity;
import akin.model.finding.WhereFound;
import akin.model.gear.Output;
import akin.model.gear.Profile;
import akin.model.quantity.Stops;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The profile of a unit among those that its body offers in this mode.
 *
 * @param unitName name of the unit
 * @param profile id of the profile set
 * @param look true when it burns a display look in
 * @param stops stops from the usable floor to clip, at its lowest native ISO
 * @param widest the widest without a look that the mode offers; null when the one set is, or when the output forces the
 *     encoding
 * @param widestStops its stops; those of the one set where there is none
 */
public record ProfileChoice(
        String unitName,
        String profile,
        boolean look,
        double stops,
        @Nullable String widest,
        double widestStops) implements Derived {

    /** The choice, or what is missing for it. */
    public static List<Object> derive(Unit unit) {
        Profile set = unit.profile();
        Inputs inputs = Inputs.of(ProfileChoice.class, unit).setting("profile", set);
        if (set != null) {
            String key = "profiles." + set.id() + ".";
            inputs.body(key + "look", WhereFound.MANUAL, set.look())
                    .body(key + "headroom", WhereFound.TEST, set.headroom())
                    .body(key + "footroom", WhereFound.TEST, set.footroom());
        }
        return inputs.derive(() -> of(unit, requireNonNull(set)));
    }

    private static ProfileChoice of(Unit unit, Profile set) {
        double stops = requireNonNull(whole(set));
        Output output = unit.recording().output();
        Optional<Profile> widest = output != null && output.encoding() != null
                ? Optional.empty()
                : RecordedEncoding.profiles(unit).stream()
                        .filter(profile -> !Boolean.TRUE.equals(profile.look()) && whole(profile) != null)
                        .max(Comparator.comparingDouble(profile -> requireNonNull(whole(profile))))
                        .filter(profile -> requireNonNull(whole(profile)) > stops);
        return new ProfileChoice(
                unit.name(),
                set.id(),
                Boolean.TRUE.equals(set.look()),
                stops,
                widest.map(Profile::id).orElse(null),
                widest.map(profile -> requireNonNull(whole(profile))).orElse(stops));
    }

    private static @Nullable Double whole(Profile profile) {
        Stops up = profile.headroom();
        Stops down = profile.footroom();
        return up == null || down == null ? null : up.value() + down.value();
    }

    /** How many stops more the widest holds. */
    public double narrower() {
        return widestStops - stops;
    }

    /** A look in 8 bits is there to stay; in more it can be pulled apart a little, at a visible cost. */
    public static Severity severityOfLook(Unit unit) {
        return GradingRoom.derive(unit).get(0) instanceof GradingRoom room && room.roomy()
                ? Severity.LOSSY
                : Severity.BAKED_IN;
    }

    /** Sets the widest profile, where there is one; otherwise lighting for the one that is set. */
    public List<Fix> fixes(Unit unit) {
        List<Fix> fixes = new ArrayList<>();
        if (widest != null) {
            fixes.add(Fix.set("set-profile", unit.path("profile"), widest)
                    .with("to", null, widest)
                    .with("holds", null, widestStops, "stops"));
        } else {
            fixes.add(Fix.advise("keep-and-light"));
        }
        return List.copyOf(fixes);
    }
}
