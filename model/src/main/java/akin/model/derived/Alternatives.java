package akin.model.derived;

import akin.model.gear.Lens;
import akin.model.gear.Mode;
import akin.model.gear.Profile;
import akin.model.quantity.Length;
import akin.model.rig.FittedLens;
import akin.model.rig.Kit;
import akin.model.rig.Unit;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** What a unit could use instead of what is planned, without anything else having to change. */
public final class Alternatives {

    private Alternatives() {}

    /** The other modes of its body that keep its rate, profile, codec and output, by id. */
    static List<Mode> modes(Unit unit) {
        Profile profile = unit.profile();
        var recording = unit.recording();
        var codec = recording.external() ? null : recording.codec();
        var output = recording.output();
        return unit.body().modes().values().stream()
                .filter(mode -> !mode.id().equals(unit.mode().id()))
                .filter(mode -> mode.rates() != null && mode.rates().offers(unit.rate()))
                .filter(mode -> profile == null || offers(mode.profiles(), profile.id()))
                .filter(mode -> codec == null || offers(mode.codecs(), codec.id()))
                .filter(mode -> output == null || offers(mode.outputs(), output.id()))
                .sorted(java.util.Comparator.comparing(Mode::id))
                .toList();
    }

    private static boolean offers(@Nullable List<String> offered, String id) {
        return offered == null || offered.contains(id);
    }

    /** The other lenses of the kit that fit where its lens sits now, in the order of the kit. */
    public static List<Lens> lenses(Unit unit, Kit kit) {
        FittedLens fitted = unit.lens();
        if (fitted == null || kit.lenses() == null) {
            return List.of();
        }
        String mount = fitted.adapter() == null
                ? unit.body().mount()
                : fitted.adapter().lensMount();
        return kit.lenses().stream()
                .filter(lens -> !lens.id().equals(fitted.lens().id()))
                .filter(lens -> mount != null && Objects.equals(lens.mount(), mount))
                .toList();
    }

    /** The focal length nearest to a wanted one that a lens can be set to, in tenths of a millimetre where it can zoom. */
    static @Nullable Length nearestFocal(Lens lens, double wantedMm) {
        Length shortest = lens.focal();
        if (shortest == null) {
            return null;
        }
        Length longest = lens.focalTo() == null ? shortest : lens.focalTo();
        double tenths = Math.round(wantedMm * 10) / 10.0;
        return new Length(Math.max(shortest.millimetres(), Math.min(longest.millimetres(), tenths)));
    }
}
