package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.Fix;
import akin.model.finding.Severity;
import akin.model.gear.Lens;
import akin.model.gear.Mode;
import akin.model.optics.PunchIn;
import akin.model.quantity.Area;
import akin.model.quantity.Length;
import akin.model.quantity.PictureSize;
import akin.model.rig.FittedLens;
import akin.model.rig.Kit;
import akin.model.rig.Production;
import akin.model.rig.Rig;
import akin.model.rig.Scene;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How far the view of a unit is from the hero's, and ways to bring it there: from the same place, or in one scene that the
 * two shoot from different distances.
 *
 * @param matched the unit that is matched
 * @param own its view as planned
 * @param hero the hero's view
 * @param station where the two stand; null from the same place
 * @param tolerance how far apart views may be, in per cent
 */
public record ViewFix(
        Unit matched, View own, View hero, @Nullable Station station, double tolerance) {

    /**
     * Where two units stand in a scene.
     *
     * @param scene the scene
     * @param distance from the unit to the subject
     * @param heroDistance from the hero to the subject
     */
    public record Station(Scene scene, Length distance, Length heroDistance) {}

    /**
     * A lens at a focal length, and the view that it would give.
     *
     * @param lens the lens
     * @param focal the focal length that comes nearest
     * @param wider how much wider than the hero's the view then is, in per cent of the narrower; negative: narrower
     */
    private record Offer(Lens lens, Length focal, double wider) {}

    /**
     * One for each scene that the two shoot from different distances; one from the same place where there is no such scene,
     * or some other scene beside them.
     */
    public static List<ViewFix> each(Rig rig, Unit unit, View own, View hero, double tolerance) {
        List<ViewFix> all = new ArrayList<>();
        boolean together = rig.scenes().isEmpty();
        for (Scene scene : rig.scenes()) {
            if (!scene.shotBy(unit.name()) || !scene.shotBy(hero.unitName())) {
                continue;
            }
            Length distance = scene.distanceOf(unit.name());
            Length heroDistance = scene.distanceOf(hero.unitName());
            if (distance == null || heroDistance == null || distance.equals(heroDistance)) {
                together = true;
            } else {
                all.add(new ViewFix(unit, own, hero, new Station(scene, distance, heroDistance), tolerance));
            }
        }
        if (together || all.isEmpty()) {
            all.add(new ViewFix(unit, own, hero, null, tolerance));
        }
        return all;
    }

    /** How many times as far from the subject as the hero the unit stands. */
    private double fartherBy() {
        return station == null
                ? 1
                : station.distance().millimetres() / station.heroDistance().millimetres();
    }

    /** How much farther from the subject than the hero the unit stands, in per cent of the nearer; negative: nearer. */
    public double distancePercent() {
        double ratio = fartherBy();
        return ratio >= 1 ? 100 * (ratio - 1) : -100 * (1 / ratio - 1);
    }

    /** Where the two stand, in words. */
    public String place() {
        return station == null
                ? "from the same place"
                : "in " + station.scene().name() + ", from " + station.distance() + " against "
                        + station.heroDistance();
    }

    /** Name of the scene; of two that stand elsewhere only. */
    public String scene() {
        return elsewhere().scene().name();
    }

    /** From the unit to the subject; of two that stand elsewhere only. */
    public Length distance() {
        return elsewhere().distance();
    }

    /** From the hero to the subject; of two that stand elsewhere only. */
    public Length heroDistance() {
        return elsewhere().heroDistance();
    }

    /** The dotted path of the distance that differs; of two that stand elsewhere only. */
    public String distancePath() {
        Scene scene = elsewhere().scene();
        return scene.path(
                "distances." + (scene.distances().containsKey(matched.name()) ? matched.name() : hero.unitName()));
    }

    /** The dotted path of the setting that decides: the distance where the two stand elsewhere, else the focal length. */
    public String path() {
        return station == null ? matched.path("lens.focal") : distancePath();
    }

    private Station elsewhere() {
        return requireNonNull(station);
    }

    /** The focal length to set for the hero's view, in millimetres on the lens's ring. */
    public double wantedMm() {
        return own.ringFocalFor(hero) * fartherBy();
    }

    /** How much wider than the hero's the view is, in per cent of the narrower; negative: narrower. */
    public double wider() {
        return wider(own);
    }

    /** How far from the hero's the view is, in per cent of the narrower. */
    public double apart() {
        return Math.abs(wider());
    }

    private double wider(View view) {
        double ratio = view.sideMm() / view.focalMm() * fartherBy() / (hero.sideMm() / hero.focalMm());
        return ratio >= 1 ? 100 * (ratio - 1) : -100 * (1 / ratio - 1);
    }

    /** The focal length nearest to the wanted one that the planned lens can be set to, in millimetres. */
    public double nearestMm() {
        return offer(fitted().lens(), own).map(o -> o.focal().millimetres()).orElse(own.ringMm());
    }

    /** How far from the hero's the view then still is, in per cent. */
    public double nearestApart() {
        return Math.abs(wider(own.at(nearestMm())));
    }

    /** Where the view was too wide or too narrow: the name of the unit whose picture has to be enlarged in post. */
    public String getEnlarged() {
        return wider() > 0 ? matched.name() : hero.unitName();
    }

    /**
     * Fixable where the picture that has to be enlarged keeps at least the width that is delivered; otherwise, or where
     * that is not known, lossy.
     */
    public Severity severity(Unit heroUnit, Production production) {
        Unit whose = wider() > 0 ? matched : heroUnit;
        PictureSize picture = whose.recordedPicture();
        PictureSize delivered =
                production.delivery() == null ? null : production.delivery().picture();
        if (picture == null || delivered == null) {
            return Severity.LOSSY;
        }
        double left = new PunchIn(Math.abs(wider())).pixelsLeft(picture.width()) * Steadiness.shareUsed(whose);
        return left >= delivered.width() ? Severity.FIXABLE : Severity.LOSSY;
    }

    /**
     * By standing where the hero stands, where that alone gives the hero's view. Key: same-distance. Only an edit where it
     * is the unit's own distance that is written.
     */
    public List<Fix> byPlace() {
        return station != null && Math.abs(own.percentWider(hero)) <= tolerance
                ? List.of(stand("same-distance"))
                : List.of();
    }

    /** By standing where the hero stands, and the focal length that then gives its view. Key: same-spot. */
    public List<Fix> sameSpot() {
        View there = own;
        ViewFix together = new ViewFix(matched, there, hero, null, tolerance);
        Optional<Offer> offer = together.offer(fitted().lens(), there).filter(together::cures);
        Fix fix = stand("same-spot");
        if (offer.isEmpty()) {
            return List.of(Fix.advise("stand-alike").with("focal", null, together.wantedMm(), "mm"));
        }
        Length focal = offer.get().focal();
        return List.of((focal.millimetres() == own.ringMm() ? fix : fix.and(matched.path("lens.focal"), focal))
                .with("focal", null, focal.millimetres(), "mm"));
    }

    private Fix stand(String key) {
        Scene scene = elsewhere().scene();
        return Fix.set(key, scene.path("distances." + matched.name()), heroDistance())
                .with("stand", null, heroDistance().metres(), "m");
    }

    /** By focal length: on the planned lens, or on the best other one of the kit. Keys: set-focal, use-lens. */
    public List<Fix> byFocal(Kit kit) {
        List<Fix> fixes = new ArrayList<>();
        offer(fitted().lens(), own)
                .filter(this::cures)
                .ifPresent(offer ->
                        fixes.add(numbers(Fix.set("set-focal", matched.path("lens.focal"), offer.focal()), offer)));
        if (fixes.isEmpty()) {
            others(kit).stream()
                    .filter(this::cures)
                    .min(nearest())
                    .ifPresent(offer -> fixes.add(numbers(
                            Fix.set(
                                            "use-lens",
                                            matched.path("lens.use"),
                                            offer.lens().id())
                                    .and(matched.path("lens.focal"), offer.focal()),
                            offer)));
        }
        return fixes;
    }

    /** By another mode of the body, with the planned lens. Key: change-mode. */
    public List<Fix> byMode() {
        List<Fix> fixes = new ArrayList<>();
        for (Mode mode : Alternatives.modes(matched)) {
            Area area = mode.activeArea();
            if (area == null) {
                continue;
            }
            double used = Steadiness.shareUsed(matched);
            View there = own.on(new Area(area.widthMm() * used, area.heightMm() * used));
            offer(fitted().lens(), there)
                    .filter(this::cures)
                    .ifPresent(offer -> fixes.add(numbers(
                            focal(Fix.set("change-mode", matched.path("mode"), mode.id()), offer)
                                    .with("mode", null, mode.id()),
                            offer)));
        }
        return fixes;
    }

    /** True when no lens at hand comes within tolerance. */
    public boolean nothingAtHand(Kit kit) {
        return byFocal(kit).isEmpty();
    }

    /** How far from the hero's view the best lens at hand stays, in per cent. */
    public double bestApart(Kit kit) {
        return best(kit).map(offer -> Math.abs(offer.wider())).orElse(apart());
    }

    /** As {@link #severity}, for the best lens at hand. */
    public Severity bestSeverity(Kit kit, Production production, Frame ownFrame, Frame heroFrame) {
        PictureSize delivered =
                production.delivery() == null ? null : production.delivery().picture();
        return best(kit)
                        .filter(offer -> delivered != null
                                && pixels(offer, offer.wider() >= 0 ? ownFrame : heroFrame) >= delivered.width())
                        .isPresent()
                ? Severity.FIXABLE
                : Severity.LOSSY;
    }

    private Optional<Offer> best(Kit kit) {
        List<Offer> offers = new ArrayList<>(others(kit));
        offer(fitted().lens(), own).ifPresent(offers::add);
        Optional<Offer> wide =
                offers.stream().filter(offer -> offer.wider() >= 0).min(nearest());
        return wide.isPresent() ? wide : offers.stream().min(nearest());
    }

    private static double pixels(Offer offer, Frame frame) {
        return new PunchIn(Math.abs(offer.wider())).pixelsLeft(frame.picture().width()) * frame.shareUsed();
    }

    /**
     * By enlarging in post what the nearest lens at hand gives: the unit's picture where one at hand is wider than the
     * hero's view, else the hero's. Key: punch-in.
     */
    public List<Fix> byPunchIn(Kit kit, Frame ownFrame, Frame heroFrame) {
        return best(kit).stream()
                .map(offer -> {
                    Frame frame = offer.wider() >= 0 ? ownFrame : heroFrame;
                    return numbers(Fix.advise("punch-in"), offer)
                            .with("enlarged", null, frame.unitName())
                            .with("by", null, Math.abs(offer.wider()), "%")
                            .with("pixels", null, pixels(offer, frame), "px");
                })
                .toList();
    }

    private Fix focal(Fix fix, Offer offer) {
        return offer.focal().millimetres() == own.ringMm() ? fix : fix.and(matched.path("lens.focal"), offer.focal());
    }

    private FittedLens fitted() {
        return requireNonNull(matched.lens());
    }

    private List<Offer> others(Kit kit) {
        return Alternatives.lenses(matched, kit).stream()
                .filter(lens -> lens.squeeze() != null)
                .flatMap(lens -> offer(lens, own.with(requireNonNull(lens.squeeze()), own.ringMm())).stream())
                .toList();
    }

    private Optional<Offer> offer(Lens lens, View view) {
        Length focal = Alternatives.nearestFocal(lens, view.ringFocalFor(hero) * fartherBy());
        return Optional.ofNullable(focal).map(f -> new Offer(lens, f, wider(view.at(f.millimetres()))));
    }

    private boolean cures(Offer offer) {
        return Math.abs(offer.wider()) <= tolerance;
    }

    private static Comparator<Offer> nearest() {
        return Comparator.<Offer>comparingDouble(offer -> Math.abs(offer.wider()))
                .thenComparing(offer -> offer.lens().id());
    }

    private static Fix numbers(Fix fix, Offer offer) {
        return fix.with("lens", null, offer.lens().called())
                .with("focal", null, offer.focal().millimetres(), "mm")
                .with("left", null, Math.abs(offer.wider()), "%");
    }
}
