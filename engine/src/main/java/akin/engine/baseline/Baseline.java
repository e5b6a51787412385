package akin.engine.baseline;

import akin.engine.assess.Assessment;
import akin.engine.assess.FailOn;
import akin.engine.read.BadInput;
import akin.engine.read.Binder;
import akin.engine.read.Document;
import akin.engine.read.Node;
import akin.engine.read.Say;
import akin.model.finding.Severity;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * The findings that were there when a baseline was written: how many of each, by rig file. A finding is known by its rule,
 * its units and the path of its setting; never by its line or its words, so that neither an edit elsewhere in the file nor a
 * better sentence makes it new.
 *
 * @param rigs by the rig file's name as the baseline has it, how many findings there are of each key
 */
public record Baseline(SortedMap<String, SortedMap<Key, Integer>> rigs) {

    /** The format version that this program reads and writes. */
    public static final int VERSION = 1;

    /** The key of the format version. */
    public static final String FORMAT = "akin-baseline";

    /** Copies the maps. */
    public Baseline {
        SortedMap<String, SortedMap<Key, Integer>> copy = new TreeMap<>();
        rigs.forEach((rig, counts) -> copy.put(rig, Collections.unmodifiableSortedMap(new TreeMap<>(counts))));
        rigs = Collections.unmodifiableSortedMap(copy);
    }

    /**
     * What a finding is known by.
     *
     * @param rule id of the rule
     * @param units names of the units concerned
     * @param path dotted path of the setting that caused it
     */
    public record Key(String rule, List<String> units, String path) implements Comparable<Key> {

        private static final Comparator<Key> ORDER = Comparator.comparing(Key::rule)
                .thenComparing(key -> String.join(", ", key.units()))
                .thenComparing(Key::path)
                .thenComparing(key -> key.units().toString());

        /** Copies the list. */
        public Key {
            units = List.copyOf(units);
        }

        /** What this finding is known by. */
        public static Key of(Assessment.Entry entry) {
            return new Key(entry.rule(), entry.units(), entry.path());
        }

        @Override
        public int compareTo(Key other) {
            return ORDER.compare(this, other);
        }
    }

    /** A baseline file written in another version of the format, which this program cannot compare with. */
    public static final class OtherVersion extends RuntimeException {
        private static final long serialVersionUID = 1L;

        OtherVersion(String message) {
            super(message);
        }
    }

    /** The file as it is written. */
    record Sheet(
            @JsonProperty(value = FORMAT, required = true) Integer version,
            @JsonProperty(required = true) List<RigSheet> rigs) {}

    /** One rig file in it. */
    record RigSheet(
            @JsonProperty(required = true) String rig,
            @JsonProperty(required = true) List<FindingSheet> findings) {}

    /** One finding in it; several of the same key are counted. */
    record FindingSheet(
            @JsonProperty(required = true) String rule,
            @JsonProperty(required = true) List<String> units,
            @JsonProperty(required = true) String path,
            @Nullable Integer count) {}

    /**
     * Reads a baseline file. JSON is read as the YAML that it also is, so a mistake in it is reported with its place.
     *
     * @throws OtherVersion when it is of another version of the format
     * @throws BadInput when it is no baseline file
     */
    public static Baseline read(Document document, Binder binder) {
        if (document.at(FORMAT).orElse(null) instanceof Node.Scalar version
                && !version.text().equals(String.valueOf(VERSION))) {
            throw new OtherVersion(
                    "it is of format version " + Say.clean(version.text()) + ", this Akin reads " + VERSION);
        }
        Sheet sheet = binder.bind(document, Sheet.class);
        SortedMap<String, SortedMap<Key, Integer>> rigs = new TreeMap<>();
        int index = 0;
        for (RigSheet rig : sheet.rigs()) {
            SortedMap<Key, Integer> counts = new TreeMap<>();
            for (FindingSheet finding : rig.findings()) {
                int count = finding.count() == null ? 1 : finding.count();
                Key key = new Key(finding.rule(), finding.units(), finding.path());
                if (count < 1 || counts.put(key, count) != null) {
                    throw document.error(
                            "rigs." + index + ".findings",
                            count < 1 ? "a finding is there once or more" : "a finding of " + key.rule() + " twice");
                }
            }
            if (rigs.put(rig.rig(), counts) != null) {
                throw document.error("rigs." + index + ".rig", "the rig " + Say.quote(rig.rig()) + " a second time");
            }
            index++;
        }
        return new Baseline(rigs);
    }

    /** The findings of one assessment, as a baseline counts them; the waived are none of its business. */
    public static SortedMap<Key, Integer> count(Assessment assessment) {
        SortedMap<Key, Integer> counts = new TreeMap<>();
        assessment.findings().forEach(entry -> counts.merge(Key.of(entry), 1, Integer::sum));
        assessment.known().forEach(entry -> counts.merge(Key.of(entry), 1, Integer::sum));
        return counts;
    }

    /** How many findings it holds. */
    public int size() {
        return rigs.values().stream()
                .flatMap(counts -> counts.values().stream())
                .mapToInt(Integer::intValue)
                .sum();
    }

    /**
     * An assessment with the findings that this baseline holds set apart. Where there are more of a key than it holds, the
     * least urgent of them are taken as the known ones: it cannot be told which are new, and the safe guess fails.
     *
     * @param rig the rig file's name as this baseline has it
     */
    public Assessment apply(String rig, Assessment assessment, FailOn failOn) {
        Map<Key, Integer> left = new HashMap<>(rigs.getOrDefault(rig, Collections.emptySortedMap()));
        List<Assessment.Entry> fresh = new ArrayList<>();
        List<Assessment.Entry> known = new ArrayList<>();
        for (int i = assessment.findings().size() - 1; i >= 0; i--) {
            Assessment.Entry entry = assessment.findings().get(i);
            int more = left.getOrDefault(Key.of(entry), 0);
            left.put(Key.of(entry), more - 1);
            (more > 0 ? known : fresh).add(entry);
        }
        Collections.reverse(fresh);
        Collections.reverse(known);
        List<Severity> severities =
                fresh.stream().map(Assessment.Entry::severity).toList();
        return new Assessment(
                assessment.file(),
                assessment.production(),
                assessment.hero(),
                assessment.tolerance(),
                failOn.verdict(severities, !assessment.unchecked().isEmpty()),
                assessment.checks(),
                fresh,
                assessment.waived(),
                known,
                assessment.unchecked(),
                assessment.targets(),
                assessment.cautions(),
                assessment.notes());
    }

    /**
     * What this baseline holds that is not there any more.
     *
     * @param rig the rig file's name as this baseline has it
     * @param now the findings that are there now
     */
    public List<Gone> gone(String rig, Map<Key, Integer> now) {
        List<Gone> gone = new ArrayList<>();
        rigs.getOrDefault(rig, Collections.emptySortedMap()).forEach((key, count) -> {
            for (int i = now.getOrDefault(key, 0); i < count; i++) {
                gone.add(new Gone(rig, key));
            }
        });
        return List.copyOf(gone);
    }

    /**
     * A finding that a baseline holds and that is not there any more.
     *
     * @param rig the rig file's name as the baseline has it
     * @param key what the finding was known by
     */
    public record Gone(String rig, Key key) {}

    /**
     * What became of a baseline in a check.
     *
     * @param file the baseline file as it was named
     * @param known how many findings stand in it
     * @param fresh how many findings do not
     * @param gone what it holds that is not there any more
     * @param trouble why it could not be compared with, in which case every finding is new; null when it could
     * @param strict true when nobody is watching, so that a missing or outdated baseline fails the check
     */
    public record Comparison(
            String file,
            int known,
            int fresh,
            List<Gone> gone,
            @Nullable String trouble,
            boolean strict) {
        /** Copies the list. */
        public Comparison {
            gone = List.copyOf(gone);
        }

        /** True when it fails the check: nobody is watching, and it is missing or holds what is not there any more. */
        public boolean fails() {
            return strict && (trouble != null || !gone.isEmpty());
        }
    }
}
