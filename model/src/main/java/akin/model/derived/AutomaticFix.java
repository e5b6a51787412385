package akin.model.derived;

import akin.model.finding.Fix;
import akin.model.finding.Severity;
import akin.model.gear.IsoMenu;
import akin.model.gear.ShutterMenu;
import akin.model.quantity.Aperture;
import akin.model.quantity.Iso;
import akin.model.quantity.Shutter;
import akin.model.rig.FittedLens;
import akin.model.rig.Rig;
import akin.model.rig.Setting;
import akin.model.rig.Unit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** What to set where a body was left to choose: the hero's time, a native ISO, the stop of the hero's depth. */
public final class AutomaticFix {

    private static final Shutter HALF_TURN = new Shutter.Angle(BigDecimal.valueOf(180));

    private AutomaticFix() {}

    /** A shutter that drifts changes blur and flicker, which nothing undoes; brightness can be followed in the grade. */
    public static Severity severity(Setting setting) {
        return setting == Setting.SHUTTER ? Severity.BAKED_IN : Severity.LOSSY;
    }

    /** What people call the setting. */
    public static String words(Setting setting) {
        return switch (setting) {
            case SHUTTER -> "shutter";
            case STOP -> "iris";
            case ISO -> "ISO";
            case WHITE -> "white balance";
        };
    }

    /** At most one fix, keyed {@code set-} and the setting; none where what it follows from is not known. */
    public static List<Fix> fixes(Rig rig, Unit unit, Setting setting) {
        Unit hero = rig.units().stream().filter(Unit::hero).findFirst().orElseThrow();
        Optional<Fix> fix = switch (setting) {
            case SHUTTER -> shutter(unit, hero).map(to -> set("set-shutter", unit, setting, to));
            case STOP -> stop(unit, hero).map(to -> set("set-stop", unit, setting, to));
            case ISO -> iso(unit, hero).map(to -> set("set-iso", unit, setting, to));
            case WHITE -> Optional.empty();
        };
        return fix.stream().toList();
    }

    private static Fix set(String key, Unit unit, Setting setting, Object to) {
        return Fix.set(key, unit.path(setting.key()), to).with("to", null, to);
    }

    private static Optional<Shutter> shutter(Unit unit, Unit hero) {
        ShutterMenu menu = unit.body().shutter();
        if (menu == null) {
            return Optional.empty();
        }
        Shutter heros = hero.shutter();
        BigFraction wanted = heros == null ? HALF_TURN.seconds(unit.rate()) : heros.seconds(hero.rate());
        return menu.nearest(wanted, unit.rate());
    }

    private static Optional<Iso> iso(Unit unit, Unit hero) {
        IsoMenu menu = unit.body().iso();
        List<Iso> bases = unit.mode().isoBases();
        if (bases == null && unit.profile() != null) {
            bases = unit.profile().isoBases();
        }
        Iso wanted = bases == null || bases.isEmpty() ? hero.iso() : bases.get(0);
        return menu == null || wanted == null ? Optional.empty() : menu.nearest(wanted.value());
    }

    /** The stop whose entrance pupil is the hero's: N x own focal length / hero's. */
    private static Optional<Aperture> stop(Unit unit, Unit hero) {
        FittedLens mine = unit.lens();
        FittedLens heros = hero.lens();
        if (mine == null || heros == null || mine.focal() == null || heros.focal() == null || heros.stop() == null) {
            return Optional.empty();
        }
        double number = heros.stop().number()
                * mine.focal().millimetres()
                / heros.focal().millimetres();
        double mark = Aperture.nearestThirdStopMark(number);
        return Optional.of(new Aperture(mark, heros.stop().kind()));
    }
}
