package akin.model.derived;

import akin.model.finding.Fix;
import akin.model.quantity.Frequency;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import akin.model.timing.ScreenRefresh;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How a screen shows in a unit's picture at its exposure time.
 *
 * @param screen the screen
 * @param exposure the exposure
 */
public record ScreenBar(ScreenInShot screen, ExposureTime exposure) {

    /** The worst that a unit is known to meet at an exposure: one, or none where no screen is known. */
    public static List<ScreenBar> worst(Rig rig, Unit unit, ExposureTime exposure) {
        return ScreenInShot.known(rig, unit)
                .map(screen -> new ScreenBar(screen, exposure))
                .max(Comparator.comparingDouble(ScreenBar::percentOff)
                        .thenComparing(bar -> bar.screen().path(), Comparator.reverseOrder()))
                .stream()
                .toList();
    }

    /** Refreshes within one exposure. */
    public double refreshes() {
        return ScreenRefresh.refreshes(exposure.seconds(), screen.hertz());
    }

    /** The part of the screen that is shown once too often or too seldom, in per cent. */
    public double percentOff() {
        return screen.beat().percent(exposure.seconds());
    }

    /**
     * Settings without a bar (keys of {@link ShutterPlan#forFlicker}), and {@code drive-screen}: the refresh rate nearest to the
     * screen's own of which this exposure holds a whole number.
     */
    public List<Fix> fixes(Rig rig, Unit unit) {
        List<Fix> fixes = new ArrayList<>(ShutterPlan.forFlicker(rig, unit));
        BigFraction clean = ScreenRefresh.nearestCleanTime(exposure.seconds(), screen.hertz());
        BigFraction refresh = clean.multiply(screen.hertz()).divide(exposure.seconds());
        Frequency to = new Frequency(refresh.doubleValue());
        fixes.add(Fix.set("drive-screen", screen.path() + ".refresh", to).with("to", null, to));
        return List.copyOf(fixes);
    }
}
