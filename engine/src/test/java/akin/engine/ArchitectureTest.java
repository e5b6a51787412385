package akin.engine;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import akin.engine.book.CompiledBook;
import akin.engine.read.Place;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/**
 * Who may know of whom. Data flows one way, model and rules know nothing of the engine, and what depends on the place and
 * the moment of a run stays at the rim.
 */
@AnalyzeClasses(packages = "akin", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    /** The rim: what a person or a machine starts. */
    private static final String[] RIM = {"akin.engine.cli..", "akin.engine.web.."};

    @ArchTest
    static final ArchRule modelKnowsNothingButJavaAndNumbers = classes()
            .that()
            .resideInAPackage("akin.model..")
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage("akin.model..", "java..", "org.jspecify..", "org.apache.commons.numbers..");

    @ArchTest
    static final ArchRule modelPackagesHaveNoCycles =
            slices().matching("akin.model.(*)..").should().beFreeOfCycles();

    /** The rule book is compiled into classes of Drools' own making; what it names of ours is the model alone. */
    @ArchTest
    static final ArchRule rulesKnowTheModelOnly = noClasses()
            .that()
            .resideInAPackage("akin.rules..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("akin.engine..")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule dataFlowsOneWay = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .withOptionalLayers(true)
            .layer("read")
            .definedBy("akin.engine.read..")
            .layer("edit")
            .definedBy("akin.engine.edit..")
            .layer("book")
            .definedBy("akin.engine.book..")
            .layer("equip")
            .definedBy("akin.engine.equip..")
            .layer("assess")
            .definedBy("akin.engine.assess..")
            .layer("rank")
            .definedBy("akin.engine.rank..")
            .layer("baseline")
            .definedBy("akin.engine.baseline..")
            .layer("report")
            .definedBy("akin.engine.report..")
            .layer("rim")
            .definedBy(RIM)
            .whereLayer("rim")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("report")
            .mayOnlyBeAccessedByLayers("rim")
            .whereLayer("baseline")
            .mayOnlyBeAccessedByLayers("report", "rim")
            .whereLayer("rank")
            .mayOnlyBeAccessedByLayers("report", "rim")
            .whereLayer("assess")
            .mayOnlyBeAccessedByLayers("rank", "baseline", "report", "rim")
            .whereLayer("equip")
            .mayOnlyBeAccessedByLayers("assess", "rim")
            .whereLayer("book")
            .mayOnlyBeAccessedByLayers("assess", "rank", "report", "rim")
            .whereLayer("edit")
            .mayOnlyBeAccessedByLayers("equip", "assess", "rank", "rim")
            .whereLayer("read")
            .mayOnlyBeAccessedByLayers("edit", "book", "equip", "assess", "baseline", "rim")
            // A report tells where in the file a setting stands; of reading it knows no more.
            .ignoreDependency(resideInAPackage("akin.engine.report.."), assignableTo(Place.class));

    @ArchTest
    static final ArchRule nothingKnowsTheCommandLine = noClasses()
            .that()
            .resideOutsideOfPackages(RIM)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(RIM);

    @ArchTest
    static final ArchRule enginePackagesHaveNoCycles =
            slices().matching("akin.engine.(*)..").should().beFreeOfCycles().allowEmptyShould(true);

    @ArchTest
    static final ArchRule noClockBelowTheRim = noClasses()
            .that()
            .resideOutsideOfPackages(RIM)
            .should()
            .callMethodWhere(target(nameMatching("now"))
                    .and(target(owner(nameMatching("java\\.time\\..*"))))
                    .or(target(nameMatching("currentTimeMillis|nanoTime"))
                            .and(target(owner(assignableTo(System.class)))))
                    .or(target(nameMatching("system.*|tick.*"))
                            .and(target(owner(assignableTo(java.time.Clock.class))))))
            .orShould()
            .callConstructor(java.util.Date.class)
            .because("the same input gives the same bytes");

    @ArchTest
    static final ArchRule noLocaleOrEnvironmentBelowTheRim = noClasses()
            .that()
            .resideOutsideOfPackages(RIM)
            .should()
            .callMethodWhere(target(nameMatching("getDefault"))
                    .and(target(owner(nameMatching("java\\.util\\.(Locale|TimeZone)"))))
                    .or(target(nameMatching("systemDefault|defaultCharset")))
                    .or(target(nameMatching("getenv|getProperty|getProperties|console|lineSeparator|exit"))
                            .and(target(owner(assignableTo(System.class))))))
            .orShould()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .because("only the rim knows where it runs");

    /** The reader opens files, equipping opens the catalogue's; the rule book's pages are compiled while akin is built. */
    @ArchTest
    static final ArchRule filesAreOpenedByReadersOnly = noClasses()
            .that()
            .resideOutsideOfPackages(RIM)
            .and()
            .resideOutsideOfPackages("akin.engine.read..", "akin.engine.equip..")
            .and()
            .doNotBelongToAnyOf(CompiledBook.class)
            .should()
            .dependOnClassesThat()
            .haveNameMatching(
                    "java\\.io\\.(File|FileInputStream|FileOutputStream|FileReader|FileWriter|RandomAccessFile)"
                            + "|java\\.nio\\.file\\.(Files|Paths|FileSystems?)")
            .because("the rest of akin is given what it needs");

    @ArchTest
    static final ArchRule noStateIsShared = fields().that()
            .areStatic()
            .and()
            .areDeclaredInClassesThat(not(nameMatching("akin\\.rules\\..*")))
            .and(not(nameMatching("\\$.*"))) // of the compiler's making: switch tables, assertion status
            .should()
            .beFinal()
            .because("static state outlives the run that set it");

    @ArchTest
    static final ArchRule noLoggingAndNoJacksonTwo = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.slf4j..", "java.util.logging..", "com.fasterxml.jackson.databind..");
}
