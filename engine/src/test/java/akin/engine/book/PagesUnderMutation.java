package akin.engine.book;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The examples of RulePagesTest once more, for mutation tests alone: those run single tests thousands of times, and a
 * dynamic test cannot be run without making all others first. Here a page is a test, and costs what it alone costs.
 */
class PagesUnderMutation {

    static List<String> ids() {
        return RulePagesTest.ids();
    }

    @ParameterizedTest
    @MethodSource("ids")
    void everyExampleGivesWhatItSays(String id) {
        RulePagesTest.examples(id).forEach(example -> RulePagesTest.prove(id, example));
    }
}
