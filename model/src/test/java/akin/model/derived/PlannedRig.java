package akin.model.derived;

import akin.model.gear.Body;
import akin.model.gear.Codec;
import akin.model.gear.Mode;
import akin.model.gear.Rates;
import akin.model.gear.ShutterMenu;
import akin.model.gear.WhiteMenu;
import akin.model.quantity.ColourTemperature;
import akin.model.quantity.FrameRate;
import akin.model.quantity.Frequency;
import akin.model.quantity.Shutter;
import akin.model.quantity.Tint;
import akin.model.rig.Kit;
import akin.model.rig.LightKind;
import akin.model.rig.Match;
import akin.model.rig.Production;
import akin.model.rig.Recording;
import akin.model.rig.Rig;
import akin.model.rig.Scene;
import akin.model.rig.Setting;
import akin.model.rig.SyncPlan;
import akin.model.rig.Tolerance;
import akin.model.rig.Tolerances;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Rigs with as little in them as the facts about time and white need. */
final class PlannedRig {

    static final ShutterMenu DIAL = new ShutterMenu(
            List.of(), new ShutterMenu.AngleDial(angle("1°"), angle("360°"), angle("0.1°")), List.of(), null);

    private final FrameRate rate;
    private final List<Scene> scenes = new ArrayList<>();
    private final List<Unit> units = new ArrayList<>();

    private PlannedRig(String rate) {
        this.rate = FrameRate.parse(rate);
    }

    static PlannedRig at(String rate) {
        return new PlannedRig(rate);
    }

    static Shutter.Angle angle(String text) {
        return (Shutter.Angle) Shutter.parse(text);
    }

    static ShutterMenu times(String... times) {
        return new ShutterMenu(
                List.of(),
                null,
                List.of(times).stream()
                        .map(time -> (Shutter.Time) Shutter.parse(time))
                        .toList(),
                null);
    }

    static WhiteMenu presets(int... kelvins) {
        return new WhiteMenu(
                java.util.Arrays.stream(kelvins)
                        .mapToObj(ColourTemperature::new)
                        .toList(),
                null,
                null,
                null);
    }

    /** A scene that all units shoot; no mains when empty. */
    PlannedRig scene(String name, String mains, LightKind... lights) {
        Frequency frequency = mains.isEmpty() ? null : Frequency.parse(mains);
        scenes.add(new Scene(scenes.size(), name, null, Map.of(), List.of(lights), null, frequency, List.of()));
        return this;
    }

    PlannedRig scene(Scene scene) {
        scenes.add(scene);
        return this;
    }

    /** A unit with this shutter and menu; the first is the hero. */
    PlannedRig shutter(String shutter, @Nullable ShutterMenu menu) {
        return unit(rate, null, shutter, menu, null, null, Map.of());
    }

    PlannedRig offSpeed(String ownRate, String shutter, @Nullable ShutterMenu menu) {
        return unit(FrameRate.parse(ownRate), null, shutter, menu, null, null, Map.of("rate", "slow motion"));
    }

    /** A unit at this rate in a mode with these rates. */
    PlannedRig rate(String ownRate, @Nullable Rates offered) {
        return unit(FrameRate.parse(ownRate), offered, null, null, null, null, Map.of());
    }

    PlannedRig white(@Nullable Integer kelvin, @Nullable WhiteMenu menu) {
        return unit(rate, null, null, null, kelvin == null ? null : new ColourTemperature(kelvin), menu, Map.of());
    }

    private PlannedRig unit(
            FrameRate ownRate,
            @Nullable Rates rates,
            @Nullable String shutter,
            @Nullable ShutterMenu menu,
            @Nullable ColourTemperature white,
            @Nullable WhiteMenu whites,
            Map<String, String> intents) {
        String name = String.valueOf((char) ('A' + units.size()));
        Mode mode = new Mode(
                "open", null, null, null, null, rates, null, null, null, null, null, Map.of(), null, null, null, null);
        Body body = new Body(
                "body-" + name,
                null,
                null,
                null,
                menu,
                null,
                whites,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                Map.of("open", mode),
                Map.of(),
                Map.of(),
                Map.of(),
                null,
                null,
                null,
                null,
                null,
                null,
                null);
        units.add(new Unit(
                name,
                units.isEmpty(),
                body,
                mode,
                null,
                null,
                null,
                ownRate,
                shutter == null ? null : Shutter.parse(shutter),
                null,
                null,
                null,
                null,
                white,
                null,
                null,
                new Recording(null, null, null, null),
                null,
                null,
                SyncPlan.UNSAID,
                Set.of(),
                intents,
                null,
                null,
                Set.of()));
        return this;
    }

    /** The unit with another codec, tint and automatic settings, which few checks look at. */
    static Unit with(Unit unit, @Nullable Codec codec, @Nullable Tint tint, Set<Setting> automatic) {
        return new Unit(
                unit.name(),
                unit.hero(),
                unit.body(),
                unit.mode(),
                unit.profile(),
                unit.encoding(),
                unit.gamut(),
                unit.rate(),
                unit.shutter(),
                unit.iso(),
                unit.lens(),
                unit.filters(),
                unit.variableNd(),
                automatic.contains(Setting.WHITE) ? null : unit.white(),
                tint,
                unit.stabilisation(),
                new Recording(null, null, codec, null),
                unit.media(),
                unit.clipNames(),
                unit.sync(),
                automatic,
                unit.intents(),
                unit.build(),
                unit.monitor(),
                unit.keeps());
    }

    /** The rig, with the limits of the profile for shots cut back to back. */
    Rig rig() {
        Map<Tolerance, Double> limits = new EnumMap<>(Tolerance.class);
        for (Tolerance tolerance : Tolerance.values()) {
            limits.put(tolerance, 1.0);
        }
        limits.put(Tolerance.BLUR, 5.0);
        limits.put(Tolerance.FLICKER_RIPPLE, 1.0);
        limits.put(Tolerance.HALF_TURN_FROM, 144.0);
        limits.put(Tolerance.HALF_TURN_TO, 216.0);
        limits.put(Tolerance.WHITE, 5.0);
        limits.put(Tolerance.WHITE_FAR, 35.0);
        return new Rig(
                new Production("test", rate, null, null, null),
                new Match("A", new Tolerances("intercut", limits), Match.ViewAxis.HORIZONTAL),
                scenes,
                new Kit(null, null, null),
                Map.of(),
                units,
                List.of());
    }
}
