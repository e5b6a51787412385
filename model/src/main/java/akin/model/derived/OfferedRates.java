package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.WhereFound;
import akin.model.gear.Output;
import akin.model.gear.Rates;
import akin.model.gear.Recorder;
import akin.model.quantity.FrameRate;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The frame rates a unit can record at, from the sensor to the medium: what its mode offers, what the output carries and
 * what the recorder takes.
 *
 * @param unitName name of the unit
 * @param rate the rate that is planned
 * @param links every device on the way, the mode first
 */
public record OfferedRates(String unitName, FrameRate rate, List<Link> links) implements Derived {

    /**
     * One device on the way of the picture.
     *
     * @param called what to call it in a sentence
     * @param rates the rates it passes
     * @param mode true for the mode of the body itself
     */
    public record Link(String called, Rates rates, boolean mode) {}

    /** Copies the list. */
    public OfferedRates {
        links = List.copyOf(links);
    }

    /** The offered rates, or what is missing for them. */
    public static List<Object> derive(Unit unit) {
        Rates rates = unit.mode().rates();
        Recorder recorder = unit.recording().recorder();
        Inputs inputs = Inputs.of(OfferedRates.class, unit).mode("rates", WhereFound.SPEC_SHEET, rates);
        if (recorder != null) {
            inputs.input(recorder.path("rates"), WhereFound.SPEC_SHEET, recorder.rates());
        }
        return inputs.derive(() -> new OfferedRates(unit.name(), unit.rate(), links(unit, requireNonNull(rates))));
    }

    private static List<Link> links(Unit unit, Rates rates) {
        List<Link> links = new ArrayList<>();
        links.add(new Link("the mode " + unit.mode().id() + " of " + unit.body().called(), rates, true));
        Output output = unit.recording().output();
        if (output != null && output.rates() != null) {
            links.add(new Link(
                    "the output " + output.id() + " of " + unit.body().called(),
                    new Rates(output.rates(), null, null),
                    false));
        }
        Recorder recorder = unit.recording().recorder();
        if (recorder != null && recorder.rates() != null) {
            links.add(new Link("the recorder " + recorder.called(), new Rates(recorder.rates(), null, null), false));
        }
        return links;
    }

    /** True when every device passes this rate. */
    public boolean offers(FrameRate wanted) {
        return links.stream().allMatch(link -> link.rates().offers(wanted));
    }

    /** The first device that does not pass the planned rate; empty when all do. */
    public Optional<Link> refusal() {
        return links.stream().filter(link -> !link.rates().offers(rate)).findFirst();
    }

    /** The rate nearest to this one that every device passes; the slower of two equally near; empty when there is none. */
    public Optional<FrameRate> nearest(FrameRate wanted) {
        return RatePlan.nearest(wanted, List.of(this));
    }

    /** The rates that may come nearest to a wanted one. */
    List<FrameRate> candidates(FrameRate wanted) {
        List<FrameRate> all = new ArrayList<>();
        for (Link link : links) {
            all.addAll(link.rates().listed());
            link.rates().nearest(wanted).ifPresent(all::add);
        }
        return all;
    }

    /** Nearest first; the slower of two equally near. */
    static Comparator<FrameRate> closestTo(FrameRate wanted) {
        return Comparator.<FrameRate, org.apache.commons.numbers.fraction.BigFraction>comparing(
                        rate -> rate.fraction().subtract(wanted.fraction()).abs())
                .thenComparing(Comparator.naturalOrder());
    }
}
