package akin.engine.report;

import static java.util.Objects.requireNonNull;

import akin.engine.assess.Numbers;
import akin.model.derived.ColourMatch;
import akin.model.derived.MeasuredColour;
import akin.model.derived.MeasuredFloor;
import akin.model.derived.MeasuredGrey;
import akin.model.derived.MeasuredHeadroom;
import akin.model.derived.MeasuredRoom;
import akin.model.derived.MeasuredWhite;
import akin.model.rig.Reading;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What test shots say of one unit, in words, each number with how much it may be off.
 *
 * @param unit name of the unit
 * @param lines what was measured; empty when nothing was read of it
 */
public record OnTheDay(String unit, List<Card.Line> lines) {

    /** Copies the list. */
    public OnTheDay {
        lines = List.copyOf(lines);
    }

    /** What test shots say of each unit, the hero first; empty when none were read. */
    public static List<OnTheDay> of(Rig rig) {
        return rig.readings() == null
                ? List.of()
                : rig.units().stream().map(unit -> of(rig, unit)).toList();
    }

    private static OnTheDay of(Rig rig, Unit unit) {
        List<Card.Line> lines = new ArrayList<>();
        fact(MeasuredGrey.derive(rig, unit), MeasuredGrey.class)
                .ifPresent(grey -> lines.add(new Card.Line(
                        "grey", signed(grey.stops(), "over", "under", "stops") + give(grey.give(), "stops"))));
        fact(MeasuredWhite.derive(rig, unit), MeasuredWhite.class).ifPresent(white -> {
            lines.add(new Card.Line(
                    "white",
                    signed(white.shift().mired(), "towards amber", "towards blue", "mired")
                            + give(white.miredGive(), "mired")));
            lines.add(new Card.Line(
                    "tint",
                    signed(white.shift().duv(), "towards green", "towards magenta", "duv")
                            + give(white.duvGive(), "duv")));
        });
        fact(MeasuredRoom.derive(rig, unit), MeasuredRoom.class)
                .ifPresent(room -> lines.add(new Card.Line(
                        "white patch",
                        signed(room.stops(), "under", "over", "stops") + " the "
                                + (room.measured() ? "clip that was read" : "planned clip")
                                + give(room.give(), "stops"))));
        fact(MeasuredHeadroom.derive(rig, unit), MeasuredHeadroom.class)
                .ifPresent(read -> lines.add(new Card.Line(
                        "clip", range(signed(read.stops(), "over", "under", "stops"), read.planned(), read.give()))));
        fact(MeasuredFloor.derive(rig, unit), MeasuredFloor.class)
                .ifPresent(read -> lines.add(new Card.Line(
                        "noise floor",
                        range(signed(read.stops(), "under", "over", "stops"), read.planned(), read.give()))));
        match(rig, unit).ifPresent(match -> lines.add(new Card.Line("chart", match(match))));
        Reading reading = rig.reading(unit);
        Double spread = reading == null ? null : reading.spread();
        if (spread != null) {
            lines.add(new Card.Line(
                    "frame",
                    "patches even within " + Numbers.spoken(100 * spread, "%")
                            + " of all codes, one standard deviation at most"));
        }
        return new OnTheDay(unit.name(), lines);
    }

    private static String range(String read, double planned, double give) {
        return read + " grey, " + Numbers.spoken(planned, "stops") + " planned" + give(give, "stops");
    }

    /** The chart of a unit beside that of the hero; empty for the hero, and where one of them was not read. */
    static Optional<ColourMatch> match(Rig rig, Unit unit) {
        if (unit.hero()) {
            return Optional.empty();
        }
        Optional<MeasuredColour> hero = colour(rig, rig.units().get(0));
        Optional<MeasuredColour> other = colour(rig, unit);
        return hero.isPresent() && other.isPresent()
                ? Optional.of(ColourMatch.of(hero.get(), other.get()))
                : Optional.empty();
    }

    private static Optional<MeasuredColour> colour(Rig rig, Unit unit) {
        return fact(MeasuredColour.derive(rig, unit), MeasuredColour.class);
    }

    private static String match(ColourMatch match) {
        return "CIEDE2000 to " + match.hero() + " " + apart(match.before()) + "; exposure and white taken out, "
                + apart(match.balanced())
                + (match.matrix() == null
                        ? "; the patches do not tell a matrix"
                        : "; with the best matrix that keeps white, " + apart(requireNonNull(match.after())));
    }

    private static String apart(MeasuredColour.Apart apart) {
        return "mean " + hundredths(apart.mean()) + " (± " + hundredths(apart.meanGive()) + "), worst "
                + hundredths(apart.worst()) + " (" + apart.patch() + ")";
    }

    private static String hundredths(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }

    private static String signed(double value, String over, String under, String unit) {
        return Numbers.spoken(Math.abs(value), unit) + " " + (value < 0 ? under : over);
    }

    private static String give(double give, String unit) {
        return " (± " + Numbers.spoken(give, unit) + ")";
    }

    /** The fact itself, where what it needs was known. */
    static <T> Optional<T> fact(List<Object> derived, Class<T> kind) {
        return derived.stream().filter(kind::isInstance).map(kind::cast).findFirst();
    }
}
