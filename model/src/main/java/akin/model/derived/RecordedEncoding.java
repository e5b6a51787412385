package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.Fix;
import akin.model.finding.WhereFound;
import akin.model.gear.Codec;
import akin.model.gear.Output;
import akin.model.gear.Profile;
import akin.model.rig.Unit;
import akin.model.tone.Encoding;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The encoding that ends up in a unit's file.
 *
 * @param unitName name of the unit
 * @param encoding the encoding
 * @param raw true when raw values are written, which post develops into any encoding
 * @param forced true when the output gives another encoding than the profile that is set
 */
public record RecordedEncoding(String unitName, Encoding encoding, boolean raw, boolean forced) implements Derived {

    /** The encoding, or what is missing for it. */
    public static List<Object> derive(Unit unit) {
        return require(Inputs.of(RecordedEncoding.class, unit), unit).derive(() -> {
            Codec codec = unit.recording().codec();
            Encoding encoding = requireNonNull(unit.encoding());
            Profile profile = unit.profile();
            return new RecordedEncoding(
                    unit.name(),
                    encoding,
                    codec != null && codec.kind() == Codec.Kind.RAW,
                    profile != null
                            && profile.encoding() != null
                            && !encoding.id().equals(profile.encoding()));
        });
    }

    /** Names what is needed of a unit for the encoding in its file. */
    static Inputs require(Inputs inputs, Unit unit) {
        Output output = unit.recording().output();
        if (unit.recording().external()) {
            inputs.setting("recorder.output", output);
        }
        Profile profile = unit.profile();
        if (output == null || output.encoding() == null) {
            inputs.setting("profile", profile);
        }
        if (profile != null) {
            inputs.body("profiles." + profile.id() + ".encoding", WhereFound.MANUAL, unit.encoding());
        }
        return inputs;
    }

    /** True when the two files hold different curves, and both are developed already. */
    public boolean differs(RecordedEncoding other) {
        return !(raw && other.raw) && !encoding.id().equals(other.encoding.id());
    }

    /** A profile of the unit that writes the hero's encoding, and converting in post. */
    public List<Fix> fixes(Unit unit, RecordedEncoding hero) {
        List<Fix> fixes = new ArrayList<>();
        offered(unit, hero.encoding().id(), null)
                .ifPresent(profile -> fixes.add(Fix.set("set-profile", unit.path("profile"), profile.id())
                        .with("to", null, profile.id())));
        fixes.add(Fix.advise("convert"));
        return List.copyOf(fixes);
    }

    /** A profile that says what the output forces, where there is one, and telling the editor. */
    public List<Fix> fixesOfForced(Unit unit) {
        List<Fix> fixes = new ArrayList<>();
        profiles(unit).stream()
                .filter(profile -> encoding.id().equals(profile.encoding()))
                .findFirst()
                .ifPresent(profile -> fixes.add(
                        Fix.set("say-so", unit.path("profile"), profile.id()).with("to", null, profile.id())));
        fixes.add(Fix.advise("tell-editor"));
        return List.copyOf(fixes);
    }

    /** A profile that a unit offers in its mode for this encoding, and this gamut if any; none where the output decides. */
    static Optional<Profile> offered(Unit unit, String encoding, @Nullable String gamut) {
        Output output = unit.recording().output();
        if (output != null && output.encoding() != null) {
            return Optional.empty();
        }
        return profiles(unit).stream()
                .filter(profile -> encoding.equals(profile.encoding()))
                .filter(profile -> gamut == null || gamut.equals(profile.gamut()))
                .findFirst();
    }

    /** The profiles a unit offers in its mode, in the order of their ids. */
    static List<Profile> profiles(Unit unit) {
        List<String> ofMode = unit.mode().profiles();
        return unit.body().profiles().values().stream()
                .filter(profile -> ofMode == null || ofMode.contains(profile.id()))
                .sorted(Comparator.comparing(Profile::id))
                .toList();
    }
}
