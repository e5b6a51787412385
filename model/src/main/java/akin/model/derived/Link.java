package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.Fix;
import akin.model.finding.WhereFound;
import akin.model.gear.Codec;
import akin.model.gear.Connector;
import akin.model.gear.Input;
import akin.model.gear.Output;
import akin.model.gear.Recorder;
import akin.model.quantity.FrameRate;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The way of the picture from a body to its recorder.
 *
 * @param unitName name of the unit
 * @param output id of the body's output
 * @param input id of the recorder's input
 * @param recorder what to call the recorder
 * @param connector the slower standard of the two ends, or that of the output where they do not fit
 * @param gigabits what is sent, in Gbit/s
 * @param sum how that comes about, in words
 * @param nominal what the connector carries, in Gbit/s
 * @param refusals why the input does not take the signal, in words; empty when it does
 */
public record Link(
        String unitName,
        String output,
        String input,
        String recorder,
        Connector connector,
        double gigabits,
        String sum,
        double nominal,
        List<String> refusals)
        implements Derived {

    /** A limit met to within this part of itself is met. */
    private static final double ROUNDING = 1e-9;

    /** Copies the list. */
    public Link {
        refusals = List.copyOf(refusals);
    }

    /** The link, or what is missing for it; nothing for a unit that records inside. */
    public static List<Object> derive(Unit unit) {
        Recorder recorder = unit.recording().recorder();
        if (recorder == null) {
            return List.of();
        }
        Output output = unit.recording().output();
        Input input = unit.recording().input();
        Inputs inputs = Inputs.of(Link.class, unit).setting("recorder.output", output);
        if (recorder.inputs().isEmpty()) {
            inputs.input(recorder.path("inputs"), WhereFound.SPEC_SHEET, null);
        } else {
            inputs.setting("recorder.input", input);
        }
        if (output != null) {
            String path = "outputs." + output.id() + ".";
            inputs.body(path + "connector", WhereFound.SPEC_SHEET, output.connector())
                    .body(path + "kind", WhereFound.SPEC_SHEET, output.kind())
                    .body(path + "bits", WhereFound.SPEC_SHEET, output.bits());
            if (output.kind() != Codec.Kind.RAW) {
                String chroma = output.chroma();
                inputs.body(
                        path + "chroma",
                        WhereFound.SPEC_SHEET,
                        chroma == null || !LinkSignal.known(chroma) ? null : chroma);
            }
            inputs.mode("picture", WhereFound.SPEC_SHEET, LinkSignal.picture(unit, output));
        }
        if (input != null) {
            String path = recorder.path("inputs." + input.id() + ".");
            inputs.input(path + "connector", WhereFound.SPEC_SHEET, input.connector())
                    .input(path + "kinds", WhereFound.SPEC_SHEET, input.kinds())
                    .input(path + "bits", WhereFound.SPEC_SHEET, input.bits())
                    .input(path + "picture", WhereFound.SPEC_SHEET, input.picture());
            if (output != null && output.kind() == Codec.Kind.ENCODED) {
                String chroma = input.chroma();
                inputs.input(
                        path + "chroma",
                        WhereFound.SPEC_SHEET,
                        chroma == null || !LinkSignal.known(chroma) ? null : chroma);
            }
        }
        return inputs.derive(() -> of(unit, requireNonNull(output), requireNonNull(input), recorder));
    }

    private static Link of(Unit unit, Output output, Input input, Recorder recorder) {
        LinkSignal signal = requireNonNull(LinkSignal.of(unit, output));
        Connector connector = narrower(signal.connector(), input, unit.rate());
        return new Link(
                unit.name(),
                output.id(),
                input.id(),
                recorder.called(),
                connector,
                signal.gigabits(unit.rate()),
                signal.sum(unit.rate()),
                connector.gigabits(unit.rate()),
                refusals(unit, signal, input));
    }

    /** Why the recorder cannot write this signal as planned, in words; empty when it can. */
    private static List<String> refusals(Unit unit, LinkSignal signal, Input input) {
        List<String> why = new ArrayList<>(signal.refusals(input));
        Codec codec = unit.recording().codec();
        if (codec != null && codec.kind() == Codec.Kind.RAW && signal.kind() == Codec.Kind.ENCODED) {
            why.add("a developed picture is sent, and " + codec.id() + " is raw");
        }
        return why;
    }

    private static Connector narrower(Connector sends, Input input, FrameRate rate) {
        Connector takes = requireNonNull(input.connector());
        return takes.fits(sends) && takes.gigabits(rate) < sends.gigabits(rate) ? takes : sends;
    }

    /** True when the input takes what is sent. */
    public boolean accepted() {
        return refusals.isEmpty();
    }

    /** True when more is sent than the connector carries. */
    public boolean overloaded() {
        return gigabits > nominal * (1 + ROUNDING);
    }

    /** Why the input does not take the signal, in one sentence. */
    public String why() {
        return String.join("; ", refusals);
    }

    /** Another output in this mode that passes ({@code other-output}); or what people do, under the key given. */
    public List<Fix> fixes(Unit unit, String otherwise) {
        List<Fix> fixes = new ArrayList<>();
        other(unit)
                .ifPresent(other -> fixes.add(Fix.set("other-output", unit.path("recorder.output"), other.id())
                        .with("to", null, other.id())));
        fixes.add(Fix.advise(otherwise));
        return List.copyOf(fixes);
    }

    private Optional<Output> other(Unit unit) {
        Input into = requireNonNull(unit.recording().input());
        List<String> carried = unit.mode().outputs();
        return unit.body().outputs().values().stream()
                .filter(candidate -> !candidate.id().equals(output))
                .filter(candidate -> carried == null || carried.contains(candidate.id()))
                .filter(candidate ->
                        candidate.rates() == null || candidate.rates().contains(unit.rate()))
                .filter(candidate -> passes(unit, candidate, into))
                .min(Comparator.comparing(Output::id));
    }

    private static boolean passes(Unit unit, Output candidate, Input into) {
        LinkSignal signal = LinkSignal.of(unit, candidate);
        return signal != null
                && LinkSignal.known(signal.chroma())
                && refusals(unit, signal, into).isEmpty()
                && signal.gigabits(unit.rate())
                        <= narrower(signal.connector(), into, unit.rate()).gigabits(unit.rate()) * (1 + ROUNDING);
    }
}
