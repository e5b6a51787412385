package akin.model.derived;

import akin.model.finding.Fix;
import akin.model.gear.ShutterMenu;
import akin.model.rig.Unit;
import java.util.List;

/** The shutter setting of a unit's own menu that comes nearest to a wanted exposure time. */
public final class ShutterFix {

    private ShutterFix() {}

    /** One fix, keyed {@code set-shutter}; none when the body's menu is not known. */
    public static List<Fix> towards(Unit unit, ExposureTime wanted) {
        ShutterMenu menu = unit.body().shutter();
        if (menu == null) {
            return List.of();
        }
        return menu.nearest(wanted.seconds(), unit.rate()).stream()
                .map(setting -> {
                    ExposureTime then =
                            new ExposureTime(unit.name(), setting, unit.rate(), setting.seconds(unit.rate()));
                    return Fix.set("set-shutter", unit.path("shutter"), setting)
                            .with("setting", null, setting)
                            .with("time", null, then.milliseconds(), "ms")
                            .with("left", null, then.percentFrom(wanted), "%");
                })
                .toList();
    }
}
