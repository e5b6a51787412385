package akin.engine.cli;

import akin.engine.assess.Ranking;
import akin.engine.assess.RuleBase;
import akin.engine.assess.Survey;
import akin.engine.book.CompiledBook;
import akin.engine.equip.Candidates;
import akin.engine.equip.Catalogue;
import akin.engine.equip.Equipper;
import akin.engine.equip.Pack;
import akin.engine.read.BadInput;
import akin.engine.read.Binder;
import akin.engine.read.Document;
import akin.engine.read.GearSheet;
import akin.engine.read.Say;
import akin.engine.report.SurveyReport;
import akin.model.gear.Lens;
import akin.model.rig.FittedLens;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.cli.Options;
import org.jspecify.annotations.Nullable;

/** {@code akin survey}: which gear of a kit list matches the hero best. */
final class SurveyCommand implements Command {

    private static final String CANDIDATES = "candidates";
    private static final String UNIT = "unit";
    private static final String TOP = "top";
    private static final String JSON = "json";
    private static final String CSV = "csv";
    private static final String ALL = "all";
    private static final int USUAL_TOP = 20;

    /** Set by the launcher: a system property, true when the error stream is a terminal. */
    static final String PROGRESS = "akin.progress";

    @Override
    public String name() {
        return "survey";
    }

    @Override
    public String arguments() {
        return "RIG";
    }

    @Override
    public String purpose() {
        return "Ranks every body, mode, profile and lens of a kit list beside the hero, best first, and says why.";
    }

    @Override
    public Options options() {
        return new Options()
                .addOption(Call.value(CANDIDATES, "DIR", "the kit list: a folder of gear files, in the form of --gear"))
                .addOption(Call.lensfun("the cameras and lenses of the lensfun database as (more) candidates"))
                .addOption(Call.value(UNIT, "NAME", "put candidates in the place of this unit, whose settings stay"))
                .addOption(Call.value(TOP, "N", "how many to show (default 20), or all"))
                .addOption(Call.format("text (the default), csv or json"))
                .addOption(Call.out())
                .addOption(Call.tolerance())
                .addOption(Call.gear())
                .addOption(Call.on());
    }

    @Override
    public int run(Call call) {
        String format = call.format(List.of(Call.TEXT, CSV, JSON));
        int top = top(call.value(TOP));
        Document document = call.read(call.rig());
        Binder binder = new Binder();
        List<GearSheet> sheets = sheets(call, binder);
        Catalogue catalogue = call.catalogue(binder, document.file(), sheets);
        Rig rig = Equipper.equip(document, binder, catalogue, call.terms());
        Unit hero = rig.units().stream().filter(Unit::hero).findFirst().orElseThrow();
        Unit replaced = replaced(call.value(UNIT), rig);
        List<String> assumed = new ArrayList<>();
        Candidates candidates = completed(Candidates.of(sheets), rig, hero, replaced, assumed);
        if (candidates.size() > Integer.MAX_VALUE) {
            throw new BadInput(name(), "the kit list gives more than " + Integer.MAX_VALUE + " candidates");
        }
        Survey survey = new Survey(RuleBase.builtIn(), CompiledBook.load(), catalogue, rig, replaced, candidates);
        assume(assumed, hero.name(), replaced, candidates);
        SurveyReport.Subject subject = new SurveyReport.Subject(
                document.file(),
                rig.production().name(),
                hero.name(),
                rig.match().tolerances().profile(),
                counted(candidates.bodies(), "body", "bodies") + " in "
                        + counted(candidates.setups(), "mode and profile", "modes and profiles") + ", "
                        + counted(candidates.lenses(), "lens", "lenses"),
                assumed);
        Ranking ranking = ranked(survey, top, candidates.size());
        call.deliver(
                switch (format) {
                    case CSV -> SurveyReport.csv(ranking);
                    case JSON -> SurveyReport.json(subject, ranking, Version.number());
                    default -> SurveyReport.text(subject, ranking);
                });
        return Akin.PASSES;
    }

    private static Ranking ranked(Survey survey, int top, long size) {
        if (!Boolean.getBoolean(PROGRESS)) {
            return survey.rank(top, done -> {});
        }
        Progress bar = new Progress(new PrintWriter(System.err, false, StandardCharsets.UTF_8), size, CANDIDATES);
        try {
            return survey.rank(top, bar);
        } finally {
            bar.clear();
        }
    }

    private int top(@Nullable String written) {
        if (written == null) {
            return USUAL_TOP;
        }
        if (written.equals(ALL)) {
            return Integer.MAX_VALUE;
        }
        if (!written.matches("[1-9][0-9]{0,8}")) {
            throw new BadInput(
                    name(), "--top: read " + Say.quote(written) + "; a whole number over 0 belongs here, or all");
        }
        return Integer.parseInt(written);
    }

    private List<GearSheet> sheets(Call call, Binder binder) {
        List<GearSheet> sheets = new ArrayList<>();
        String folder = call.value(CANDIDATES);
        if (folder != null) {
            sheets.addAll(gearIn(call, folder, binder));
        }
        call.lensfun().ifPresent(sheets::add);
        if (sheets.isEmpty()) {
            throw new BadInput(
                    name(), "a kit list is missing, such as: akin survey rig.yaml --candidates kit; or --lensfun");
        }
        return sheets;
    }

    /** The gear files of a folder and of those in it, in the order of their names. */
    private static List<GearSheet> gearIn(Call call, String folder, Binder binder) {
        List<GearSheet> sheets = Pack.gearFiles(folder, Call.path(folder)).stream()
                .map(file -> GearSheet.read(call.read(file.toString()), binder))
                .toList();
        if (sheets.isEmpty()) {
            throw new BadInput(folder, "no gear file, named *.yaml or *.yml, is in this folder");
        }
        return sheets;
    }

    private static @Nullable Unit replaced(@Nullable String name, Rig rig) {
        if (name == null) {
            return null;
        }
        List<String> others = rig.units().stream()
                .filter(unit -> !unit.hero())
                .map(Unit::name)
                .toList();
        return rig.units().stream()
                .filter(unit -> unit.name().equals(name) && !unit.hero())
                .findFirst()
                .orElseThrow(() -> new BadInput(
                        "--" + UNIT,
                        "read " + Say.quote(name) + "; the units beside the hero are " + Say.list(others) + "."
                                + Say.nearest(name, others)));
    }

    /** The list, with what it does not name taken from the rig. */
    private Candidates completed(Candidates listed, Rig rig, Unit hero, @Nullable Unit replaced, List<String> assumed) {
        Candidates candidates = listed;
        if (candidates.setups() == 0) {
            if (replaced == null) {
                throw new BadInput(
                        name(),
                        "no body of which a mode is known is in the kit list; --unit NAME keeps the body of a unit");
            }
            candidates = candidates.orOn(replaced.body(), replaced.mode(), replaced.profile());
            assumed.add("The list names no body, so each lens is on that of " + replaced.name()
                    + ", in its mode and profile.");
        }
        if (candidates.lenses() == 0) {
            List<Lens> kit = rig.kit().lenses() == null ? List.of() : rig.kit().lenses();
            FittedLens own = (replaced == null ? hero : replaced).lens();
            List<Lens> instead = !kit.isEmpty() || own == null ? kit : List.of(own.lens());
            candidates = candidates.orWith(instead);
            assumed.add("The list names no lens, so each body has "
                    + (instead.isEmpty()
                            ? "none."
                            : !kit.isEmpty()
                                    ? "each lens of the rig's kit in turn."
                                    : "the lens of " + (replaced == null ? hero : replaced).name() + "."));
        }
        if (!candidates.withoutModes().isEmpty()) {
            assumed.add("Left out, since no mode of them is known: " + Say.list(candidates.withoutModes()) + ".");
        }
        return candidates;
    }

    private static void assume(List<String> assumed, String hero, @Nullable Unit replaced, Candidates candidates) {
        assumed.add("Each profile that a mode offers is a candidate of its own. Each candidate is judged alone beside "
                + hero + "; other units of the rig are left aside, and what " + hero
                + " does not carry of the kit is free.");
        if (replaced == null) {
            assumed.add("Each stands where " + hero
                    + " stands, in its scenes, at its rate, with its timecode, sound and clock.");
            assumed.add("Shutter: the setting of its own menu nearest to the exposure time of " + hero
                    + ". Focal length: the view of " + hero + ". Stop: the depth of " + hero
                    + ", as near as the lens comes.");
            assumed.add("ISO: the native one of its profile nearest to that of " + hero
                    + ", not under the floor. Filters: from its body and the kit, for the exposure of " + hero
                    + "; where equal depth leaves too little light, a higher ISO.");
            assumed.add("White: nearest in its menu to that of " + hero + ". Tint and stabilisation: as on " + hero
                    + " where it has the same, otherwise none.");
            assumed.add(
                    "It records inside what comes nearest to the codec of " + hero
                            + ". Recorder, media, clip names, build and monitor are not planned, so what hangs on them is unchecked.");
        } else {
            assumed.add("Each stands in the place of " + replaced.name()
                    + ", with all its settings. A focal length that a lens"
                    + " does not have becomes its nearest one; where the body has no codec of that id in the mode, it records"
                    + " what comes nearest to the codec of " + hero
                    + "; an output that it does not have is left open.");
        }
        assumed.add("An adapter of the kit" + (candidates.adapters().isEmpty() ? "" : " or the list")
                + " is on where mounts differ and one joins them.");
        assumed.add(
                "Best first: fewest baked-in, then the least of them in tolerances, then the same of lossy, fixable and"
                        + " advice. A check that could not run counts with the most urgent that its rule can find. What concerns "
                        + hero + " alone, and what is waived, does not count; akin check shows it.");
    }

    private static String counted(int count, String one, String more) {
        return count + " " + (count == 1 ? one : more);
    }
}
