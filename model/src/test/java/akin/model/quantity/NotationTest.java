package akin.model.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for the notation of every quantity alike. */
class NotationTest {
    private static final long SEED = 20_261_101;

    @ParameterizedTest
    @MethodSource("akin.model.quantity.Subject#all")
    void readsWhatPeopleWriteAndWritesItBack(Subject subject) {
        for (int i = 0; i < subject.good().size(); i += 2) {
            String text = subject.good().get(i);
            Object value = subject.parse().apply(text);
            assertThat(value).as(text).hasToString(subject.good().get(i + 1));
            assertThat(text).matches(subject.pattern());
        }
    }

    /** An error message that recommends something must not be wrong about it. */
    @ParameterizedTest
    @MethodSource("akin.model.quantity.Subject#all")
    void readsTheExamplesItsErrorsGive(Subject subject) {
        Matcher brackets = Pattern.compile("\\(([^)]*)\\)").matcher(subject.allowed());
        int examples = 0;
        while (brackets.find()) {
            for (String example : brackets.group(1).split(", ", -1)) {
                assertThat(subject.parse().apply(example)).as(example).isNotNull();
                assertThat(example).matches(subject.pattern());
                examples++;
            }
        }
        assertThat(examples).isPositive();
    }

    @ParameterizedTest
    @MethodSource("akin.model.quantity.Subject#all")
    void readsBackEqualWhateverItWrites(Subject subject) {
        Random random = new Random(SEED);
        Pattern pattern = Pattern.compile(subject.pattern());
        for (int i = 0; i < 1000; i++) {
            Object value = subject.made().apply(random);
            String text = value.toString();
            Object again = subject.parse().apply(text);
            assertThat(again).isEqualTo(value).hasToString(text);
            assertThat(text).matches(pattern);
        }
    }

    /**
     * Slightly wrong texts are either read or refused with a QuantityException; the pattern accepts all that are read, and
     * what it accepts beyond that is refused for a reason that is told.
     */
    @ParameterizedTest
    @MethodSource("akin.model.quantity.Subject#all")
    void patternAndParserAgreeOnSlightlyWrongTexts(Subject subject) {
        Random random = new Random(SEED);
        Pattern pattern = Pattern.compile(subject.pattern());
        int refused = 0;
        for (int i = 0; i < 400; i++) {
            String text = Spoiler.spoil(
                    subject.good().get(random.nextInt(subject.good().size())), random);
            QuantityException error = error(subject, text);
            if (error == null) {
                assertThat(text).matches(pattern);
            } else {
                refused++;
                assertThat(error.read()).isEqualTo(text);
                assertThat(error.getMessage()).doesNotContain("\n", "\r", "akin.", "Exception", "java");
                if (pattern.matcher(text).matches()) {
                    assertThat(error.hint()).as(text).isNotNull();
                }
            }
        }
        assertThat(refused).isGreaterThan(100);
    }

    private static @Nullable QuantityException error(Subject subject, String text) {
        return catchThrowableOfType(
                QuantityException.class, () -> subject.parse().apply(text));
    }

    /** ECMA-262 and Java must read a pattern alike, so it keeps to what both have, with and without the u flag. */
    @ParameterizedTest
    @MethodSource("akin.model.quantity.Subject#all")
    void patternKeepsToWhatJavaAndEcmaScriptShare(Subject subject) {
        String pattern = subject.pattern();
        assertThat(pattern).startsWith("^").endsWith("$");
        assertThat(pattern.replace("(?:", "(")).doesNotContain("(?", "*+", "++", "?+", "&&", "[^", "\\d", "\\s", "\\w");
        assertThat(pattern.replace("\\.", "").replace("\\u00A0", "").replace("\\u202F", ""))
                .doesNotContain("\\");
    }

    @ParameterizedTest
    @MethodSource("akin.model.quantity.Subject#all")
    void refusesWhatIsNoPlainNumber(Subject subject) {
        String good = subject.good().get(0);
        for (String bad : List.of(
                "",
                " ",
                "NaN",
                "Infinity",
                "-Infinity",
                "∞",
                "1e400",
                "0x10",
                "1,5",
                "1_000",
                "٢٤",
                "null",
                "-",
                ".",
                "..",
                "+",
                "°",
                good + "\n",
                " " + good,
                good + " ",
                good + " " + good,
                "\u0000" + good,
                "9".repeat(401))) {
            assertThatThrownBy(() -> subject.parse().apply(bad)).as(bad).isInstanceOf(QuantityException.class);
        }
    }

    @ParameterizedTest
    @MethodSource("akin.model.quantity.Subject#all")
    void replacesEachNumberByHostileOnes(Subject subject) {
        for (int i = 0; i < subject.good().size(); i += 2) {
            String good = subject.good().get(i);
            for (String bad : List.of(
                    "NaN", "1e400", "1E5", "0x1F", "1,5", "Infinity", "9".repeat(330), "٢", "1.2.3", ".5", "5.")) {
                String text = good.replaceFirst("[0-9]+(?:\\.[0-9]+)?", bad);
                if (!text.equals(good)) {
                    assertThatThrownBy(() -> subject.parse().apply(text))
                            .as(text)
                            .isInstanceOf(QuantityException.class);
                }
            }
        }
    }
}
