package akin.engine.assess;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.drools.kiesession.rulebase.InternalKnowledgeBase;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;

/**
 * Loads the rules that were compiled when Akin was built. The build names the generated classes in one small file; they
 * are instantiated directly, since scanning the class path or compiling rules at start would cost seconds.
 */
public final class RuleBase {

    private static final String INDEX = "/META-INF/kie/akin/akin-rules/drools-model";
    private static final String HEADER = "Drools-Model-Version:";

    private RuleBase() {}

    /**
     * The built-in rules, ready for sessions. Thread-safe once built.
     *
     * @throws IllegalStateException when the build left no rules: an empty rule base would pass everything
     */
    public static KieBase builtIn() {
        return with(List.of());
    }

    /** The built-in rules and more. */
    static InternalKnowledgeBase with(List<Model> more) {
        List<Model> models = new ArrayList<>();
        for (String name : generatedClasses()) {
            try {
                models.add(Class.forName(name)
                        .asSubclass(Model.class)
                        .getDeclaredConstructor()
                        .newInstance());
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException("the compiled rules are incomplete; build Akin again", e);
            }
        }
        models.addAll(more);
        InternalKnowledgeBase base = KieBaseBuilder.createKieBaseFromModel(models);
        if (base.getKiePackages().stream().allMatch(p -> p.getRules().isEmpty())) {
            throw new IllegalStateException("the compiled rules are missing; build Akin again");
        }
        return base;
    }

    private static List<String> generatedClasses() {
        try (InputStream in = RuleBase.class.getResourceAsStream(INDEX)) {
            if (in == null) {
                throw new IllegalStateException("the compiled rules are missing; build Akin again");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith(HEADER))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
