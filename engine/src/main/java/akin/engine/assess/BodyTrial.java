package akin.engine.assess;

import akin.engine.book.Examples;
import akin.engine.book.RuleBook;
import akin.engine.book.RulePage;
import akin.engine.book.Shelf;
import akin.engine.equip.Catalogue;
import akin.engine.equip.Terms;
import akin.engine.read.Document;
import akin.engine.read.YamlReader;
import akin.model.colour.Gamut;
import akin.model.gear.Body;
import akin.model.gear.Codec;
import akin.model.gear.Mode;
import akin.model.gear.Output;
import akin.model.gear.Profile;
import akin.model.rig.Recording;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import akin.model.tone.Encoding;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Which rules can check a body: it stands in for one of two units of a rig of which everything else is known, in each of its
 * modes, with each of its profiles, codecs and outputs, and the rules themselves say what they miss.
 */
public final class BodyTrial {

    /** Stands for a mode or a profile of which the body's sheet does not even say that there is one. */
    private static final String ANY = "any";

    /** What the matched pair leaves unsaid since nothing there needs it: light that pulses, a screen, a pan, a look. */
    private static final String OF_BOTH = """
            production: {delivery: {rate: 25}}
            scenes:
              - name: stage
                subject-distance: 2.4 m
                lights: [dimmed-led]
                pan: 10 °/s
                screens: [{name: monitor, refresh: 60 Hz}]
                dimming: [{frequency: 500 Hz, duty: 50 %}]
                flashes: 2 Hz
                takes: {longest: 10 min, total: 40 min}
            units:
              B:
                clip-names: B
                monitor: {look: dusk, encoding: sony-s-log3, gamut: s-gamut3, size: 33, viewing: bt1886, held-by: body, recorded: false}
                build:
                  firmware: '2.1'
                  accessories: 1 kg
                  draws: 20 W
                  battery: {voltage: 14.4 V, energy: 98 Wh, gives: 140 W, spares: 3, by-air: true}
                  runs: 4 h
                  rating: 12 kg
                  standing: overhead
            """;

    /** And of the way to an outside recorder, on which it does without one. */
    private static final String OUTSIDE = """
            gear:
              recorders:
                box:
                  clips: {limit: none, files: none, names: X}
                  codecs: {raw: {data: {rate: 800 Mbit/s}}, video: {data: {rate: 400 Mbit/s}}}
            units:
              B:
                codec: ~
                recorder: {use: box, output: out, codec: video, input: in, reads: legal, cable: {length: 2 m, carries: 10 m}, overlays: false, start-stop: true}
            """;

    /**
     * What came of it.
     *
     * @param can ids of the rules that can check the body whichever way it is used
     * @param cannot by id of a rule, the facts that it waits for; each once, in order
     * @param besides ids of the rules for which there is nothing to check, whatever is known
     */
    public record Result(Set<String> can, Map<String, List<Unchecked>> cannot, Set<String> besides) {}

    private final Checker checker;
    private final Catalogue catalogue;
    private final Rig inside;
    private final Rig outside;

    /**
     * A trial by the rules of this checker.
     *
     * @param catalogue where encodings and gamuts of the body are looked up
     */
    public BodyTrial(Checker checker, Catalogue catalogue) {
        this.checker = checker;
        this.catalogue = catalogue;
        Document pair = laid(OF_BOTH, Shelf.matchedPair());
        this.inside = checker.equip(pair, Terms.OF_THE_RIG);
        this.outside = checker.equip(laid(OUTSIDE, pair), Terms.OF_THE_RIG);
    }

    private static Document laid(String changes, Document on) {
        return Examples.lay(YamlReader.read(on.file(), changes), on);
    }

    /** Puts a body to the trial. */
    public Result of(Body body) {
        Map<String, Set<Unchecked>> gaps = new TreeMap<>();
        Set<String> ran = new TreeSet<>();
        for (Rig rig : rigs(body)) {
            Coverage coverage = Coverage.of(checker.book(), rig, checker.outcome(rig));
            String unit = other(rig).name();
            coverage.unchecked().stream()
                    .filter(gap -> gap.unit().equals(unit))
                    .forEach(gap -> gaps.computeIfAbsent(gap.rule(), rule -> new java.util.LinkedHashSet<>())
                            .add(gap));
            coverage.ran().stream()
                    .filter(check -> check.units().contains(unit))
                    .forEach(check -> ran.add(check.rule()));
        }
        Set<String> besides = new TreeSet<>();
        checker.book().pages().stream()
                .filter(page -> page.scope() != RulePage.Scope.RIG && RuleBook.ofThePlan(page))
                .map(RulePage::id)
                .filter(rule -> !ran.contains(rule) && !gaps.containsKey(rule))
                .forEach(besides::add);
        ran.removeAll(gaps.keySet());
        Map<String, List<Unchecked>> cannot = new TreeMap<>();
        gaps.forEach((rule, facts) -> cannot.put(rule, List.copyOf(facts)));
        return new Result(ran, cannot, besides);
    }

    /** The body in every mode with every profile, inside with every codec and outside by every output. */
    private List<Rig> rigs(Body body) {
        List<Rig> rigs = new ArrayList<>();
        Collection<Mode> modes =
                body.modes().isEmpty() ? List.of(anyMode()) : body.modes().values();
        for (Mode mode : modes) {
            List<Profile> profiles = body.profiles().values().stream()
                    .filter(profile -> offered(mode.profiles(), profile.id()))
                    .toList();
            for (Profile profile : profiles.isEmpty() ? List.of(anyProfile()) : profiles) {
                List<Codec> codecs = body.codecs().values().stream()
                        .filter(codec -> offered(mode.codecs(), codec.id()))
                        .toList();
                List<Output> outputs = body.outputs().values().stream()
                        .filter(output -> offered(mode.outputs(), output.id()))
                        .toList();
                // A body that only sends its picture out is not asked what it records inside.
                if (!codecs.isEmpty() || outputs.isEmpty()) {
                    for (Codec codec : codecs.isEmpty() ? List.of(anyCodec()) : codecs) {
                        rigs.add(with(inside, body, mode, profile, new Recording(null, null, codec, null)));
                    }
                }
                for (Output output : outputs) {
                    rigs.add(with(outside, body, mode, profile, recordedOutside(output)));
                }
            }
        }
        return rigs;
    }

    private Recording recordedOutside(Output output) {
        Recording way = other(outside).recording();
        return new Recording(
                way.recorder(),
                output,
                way.recorder() == null || output.kind() == null
                        ? way.codec()
                        : way.recorder().codecs().values().stream()
                                .filter(codec -> codec.kind() == output.kind())
                                .findFirst()
                                .orElse(way.codec()),
                way.reads(),
                way.input(),
                way.cable(),
                way.overlays(),
                way.startStop());
    }

    private static boolean offered(@Nullable List<String> ids, String id) {
        return ids == null || ids.contains(id);
    }

    private static Mode anyMode() {
        return new Mode(
                ANY, null, null, null, null, null, null, null, null, null, null, Map.of(), null, null, null, null);
    }

    private static Profile anyProfile() {
        return new Profile(ANY, null, null, null, null, null, null, null, null);
    }

    private static Codec anyCodec() {
        return new Codec(ANY, null, null, null, null, null);
    }

    private static Unit other(Rig rig) {
        return rig.units().stream().filter(unit -> !unit.hero()).findFirst().orElseThrow();
    }

    private Rig with(Rig rig, Body body, Mode mode, Profile profile, Recording recording) {
        Unit old = other(rig);
        Output output = recording.output();
        Optional<Encoding> encoding = Optional.ofNullable(
                        output != null && output.encoding() != null ? output.encoding() : profile.encoding())
                .flatMap(catalogue::encoding);
        Optional<Gamut> gamut = Optional.ofNullable(
                        output != null && output.gamut() != null ? output.gamut() : profile.gamut())
                .map(catalogue.gamuts()::get);
        Unit unit = new Unit(
                old.name(),
                false,
                body,
                mode,
                profile,
                encoding.orElse(null),
                gamut.orElse(null),
                old.rate(),
                old.shutter(),
                old.iso(),
                old.lens(),
                old.filters(),
                old.variableNd(),
                old.white(),
                old.tint(),
                old.stabilisation(),
                recording,
                old.media(),
                old.clipNames(),
                old.sync(),
                old.automatic(),
                old.intents(),
                old.build(),
                old.monitor(),
                old.keeps());
        List<Unit> units = new ArrayList<>();
        rig.units().forEach(one -> units.add(one.hero() ? one : unit));
        return new Rig(
                rig.production(), rig.match(), rig.scenes(), rig.kit(), catalogue.mounts(), units, rig.waivers());
    }
}
