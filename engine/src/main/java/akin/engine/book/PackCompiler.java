package akin.engine.book;

import akin.engine.read.BadInput;
import akin.engine.read.Place;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drools.compiler.kie.builder.impl.InternalKieModule;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;

/**
 * Compiles the rules of a pack into classes, as the build of Akin does with its own. It takes seconds, so what comes of it
 * is worth keeping.
 */
public final class PackCompiler {

    /** Under which names the compiler puts what it makes. */
    static final String GROUP = "akin.pack";

    static final String ARTIFACT = "rules";

    private static final Pattern PACKAGE = Pattern.compile("(?m)^\\s*package\\s+([A-Za-z_][\\w.]*)\\s*;?\\s*$");
    private static final String RESERVED = "akin";
    private static final String GENERATED = "Java source of ";
    /** What the compiler puts before a mistake in syntax; its line is told already. */
    private static final Pattern NUMBERED = Pattern.compile("^\\[ERR \\d+] Line \\d+:\\d+ ");

    private static final String NOISE = "Parser returned a null Package";
    private static final Pattern WORD = Pattern.compile("[A-Za-z_$][\\w$]*");
    private static final Pattern EXPRESSION =
            Pattern.compile("^[^:]*(?:expression|Expression|class|type)[^:]*?:? (.+?):?$");

    /** What the compiler puts between the names that it complains of. */
    private static final Set<String> ITS_WORDS = Set.of(
            "a",
            "an",
            "and",
            "any",
            "applicable",
            "are",
            "arguments",
            "be",
            "cannot",
            "class",
            "constructor",
            "does",
            "exception",
            "expected",
            "expression",
            "field",
            "find",
            "for",
            "from",
            "import",
            "in",
            "incompatible",
            "is",
            "it",
            "left",
            "method",
            "mismatch",
            "must",
            "not",
            "of",
            "on",
            "operator",
            "or",
            "parse",
            "part",
            "resolved",
            "right",
            "syntax",
            "the",
            "this",
            "to",
            "token",
            "tokens",
            "type",
            "unable",
            "undefined",
            "variable",
            "with",
            "analyse",
            "convert",
            "error");

    private PackCompiler() {}

    /**
     * The compiled rules, as the bytes of a jar.
     *
     * @throws BadInput at the first mistake in a DRL file, with its line there
     */
    public static byte[] compile(RulePack pack) {
        if (pack.rules().isEmpty()) {
            throw new BadInput(pack.name(), "no file of rules, named *" + RulePack.DRL + ", is in this folder");
        }
        KieServices services = KieServices.get();
        KieFileSystem files = services.newKieFileSystem();
        files.generateAndWritePomXML(services.newReleaseId(GROUP, ARTIFACT, pack.digest()));
        pack.rules().forEach((path, text) -> files.write(resource(pack, path, text), text));
        KieBuilder builder = services.newKieBuilder(files).buildAll(ExecutableModelProject.class);
        List<Message> mistakes = builder.getResults().getMessages(Message.Level.ERROR).stream()
                .filter(message -> !message.getText().startsWith(GENERATED)
                        && !message.getText().startsWith(NOISE))
                .toList();
        if (!mistakes.isEmpty()) {
            throw mistake(pack, mistakes.get(0));
        }
        return ((InternalKieModule) builder.getKieModule()).getBytes();
    }

    /** Where the compiler looks for a file: in the folder that its package names. */
    private static String resource(RulePack pack, String path, String text) {
        Matcher declared = PACKAGE.matcher(text);
        if (!declared.find()) {
            throw new BadInput(
                    pack.called(path),
                    Place.START,
                    "a file of rules starts with its package, such as: package house.rules");
        }
        String name = declared.group(1);
        if (name.equals(RESERVED) || name.startsWith(RESERVED + ".")) {
            throw new BadInput(
                    pack.called(path),
                    place(text, declared.start(1)),
                    "read package " + name + "; what starts with " + RESERVED + " is Akin's own, so choose another");
        }
        return "src/main/resources/" + name.replace('.', '/') + "/" + path.replace('/', '_');
    }

    private static BadInput mistake(RulePack pack, Message message) {
        String said = message.getText()
                .lines()
                .findFirst()
                .map(line -> NUMBERED.matcher(line).replaceFirst(""))
                .orElse("it does not compile");
        List<Map.Entry<String, String>> files = meant(pack, message.getPath());
        for (Map.Entry<String, String> file : files) {
            Optional<Place> place = place(file.getValue(), message, said);
            if (place.isPresent()) {
                return new BadInput(pack.called(file.getKey()), place.get(), said);
            }
        }
        return new BadInput(pack.called(files.get(0).getKey()), Place.START, said);
    }

    /** The files that a message may be about: the one it names, else those of the package whose classes it names. */
    private static List<Map.Entry<String, String>> meant(RulePack pack, String path) {
        List<Map.Entry<String, String>> all = new ArrayList<>(pack.rules().entrySet());
        String within = String.valueOf(path);
        List<Map.Entry<String, String>> named = all.stream()
                .filter(file -> within.endsWith("/" + file.getKey().replace('/', '_')))
                .toList();
        if (!named.isEmpty()) {
            return named;
        }
        List<Map.Entry<String, String>> ofPackage = all.stream()
                .filter(file -> {
                    Matcher declared = PACKAGE.matcher(file.getValue());
                    return declared.find()
                            && within.contains("/" + declared.group(1).replace('.', '/') + "/");
                })
                .toList();
        return ofPackage.isEmpty() ? all : ofPackage;
    }

    /**
     * Where in a DRL file a mistake stands. Of syntax the compiler tells the line. Otherwise it tells the expression, or has
     * found the mistake in the Java that it made of the rule; then the line is that of the rarest name it complains of.
     */
    private static Optional<Place> place(String text, Message message, String said) {
        boolean inDrl = String.valueOf(message.getPath()).endsWith(RulePack.DRL);
        Matcher expression = EXPRESSION.matcher(said);
        if (expression.matches()) {
            int at = text.indexOf(expression.group(1).strip());
            if (at >= 0) {
                return Optional.of(place(text, at));
            }
        }
        if (inDrl && message.getLine() > 0) {
            return Optional.of(ofLine(text, message.getLine(), Math.max(0, message.getColumn())));
        }
        int best = -1;
        int fewest = Integer.MAX_VALUE;
        Set<String> seen = new HashSet<>();
        Matcher words = WORD.matcher(said);
        while (words.find()) {
            String word = words.group();
            if (ITS_WORDS.contains(word.toLowerCase(Locale.ROOT)) || !seen.add(word)) {
                continue;
            }
            Matcher uses = Pattern.compile("(?<![\\w$])" + Pattern.quote(word) + "(?![\\w$])")
                    .matcher(text);
            int first = -1;
            int count = 0;
            while (uses.find()) {
                first = first < 0 ? uses.start() : first;
                count++;
            }
            if (count > 0 && count < fewest) {
                fewest = count;
                best = first;
            }
        }
        return best < 0 ? Optional.empty() : Optional.of(place(text, best));
    }

    private static Place place(String text, int index) {
        int line = 1
                + (int) text.substring(0, index).chars().filter(c -> c == '\n').count();
        int start = text.lastIndexOf('\n', index - 1) + 1;
        return new Place(line, 1 + text.codePointCount(start, index), index, index);
    }

    private static Place ofLine(String text, int line, int column) {
        long lines = text.lines().count();
        return new Place((int) Math.min(line, Math.max(1, lines)), column + 1, 0, 0);
    }

    /** Where a text declares a rule. */
    static Optional<Place> placeOf(String text, String rule) {
        Matcher declared = Pattern.compile("(?m)^\\s*rule\\s+[\"']" + Pattern.quote(rule) + "[\"']")
                .matcher(text);
        return declared.find() ? Optional.of(place(text, declared.end() - rule.length() - 1)) : Optional.empty();
    }
}
