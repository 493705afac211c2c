package pairwright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static java.util.Map.entry;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** The arrows of docs/architecture.md. */
@AnalyzeClasses(packages = "pairwright", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    /** From each package, the packages it may use. */
    private static final Map<String, Set<String>> ARROWS = Map.ofEntries(
            entry("acoustics", Set.of()),
            entry("model", Set.of("acoustics")),
            entry("catalogue", Set.of("model", "acoustics")),
            entry("search", Set.of("model", "acoustics")),
            entry("locker", Set.of("model", "acoustics")),
            entry("rules", Set.of("model", "acoustics")),
            entry("advice", Set.of("rules", "catalogue", "search", "model", "acoustics")),
            entry("session", Set.of("advice", "locker", "rules", "catalogue", "model", "acoustics")),
            entry("numbers", Set.of("model", "acoustics")),
            entry("drawing", Set.of("model", "acoustics")),
            entry("listen", Set.of("model", "acoustics")),
            entry("lab", Set.of("session", "locker", "numbers", "advice", "rules", "catalogue", "model", "acoustics")),
            entry("sheet", Set.of("lab", "session", "drawing", "listen", "locker", "numbers", "advice", "rules", "catalogue", "search", "model", "acoustics")),
            entry("http", Set.of("sheet", "lab", "session", "drawing", "listen", "locker", "numbers", "advice", "rules", "catalogue", "search", "model", "acoustics")),
            entry("cli", Set.of("http", "sheet", "lab", "session", "drawing", "listen", "locker", "numbers", "advice", "rules", "catalogue", "search", "model", "acoustics")));

    @ArchTest
    void arrowsGoOneWay(com.tngtech.archunit.core.domain.JavaClasses program) {
        new TreeMap<>(ARROWS).forEach((from, to) -> {
            Set<String> forbidden = new TreeSet<>(ARROWS.keySet());
            forbidden.removeAll(to);
            forbidden.remove(from);
            noClasses().that().resideInAPackage("pairwright." + from + "..")
                    .should().dependOnClassesThat().resideInAnyPackage(
                            forbidden.stream().map(name -> "pairwright." + name + "..").toArray(String[]::new))
                    .check(program);
        });
    }

    @ArchTest
    static final ArchRule packagesHaveNoCycles = slices().matching("pairwright.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule everyPackageIsOnTheMap = classes().that().resideInAPackage("pairwright..")
            .should().resideInAnyPackage(ARROWS.keySet().stream().map(name -> "pairwright." + name + "..").toArray(String[]::new));

    @ArchTest
    static final ArchRule onlyRulesSeesTheRuleEngine = onlyIn("rules", "org.drools..", "org.kie..");

    @ArchTest
    static final ArchRule onlySearchSeesLucene = onlyIn("search", "org.apache.lucene..");

    @ArchTest
    static final ArchRule onlyTheLockerSeesDatabases = onlyIn("locker", "java.sql..", "javax.sql..", "org.sqlite..", "org.postgresql..", "com.zaxxer.hikari..");

    @ArchTest
    static final ArchRule onlyTheLockerSeesTablesAndCalendars = onlyIn("locker", "org.apache.commons.csv..", "biweekly..");

    @ArchTest
    static final ArchRule onlySessionSeesTheSolver = onlyIn("session", "com.google.ortools..");

    @ArchTest
    static final ArchRule onlyHttpSeesTheServer = onlyIn("http", "io.javalin..", "org.eclipse.jetty..", "io.micrometer..");

    @ArchTest
    static final ArchRule onlySheetSeesTemplates = onlyIn("sheet", "gg.jte..");

    @ArchTest
    static final ArchRule onlyCliSeesTheCommandLine = onlyIn("cli", "picocli..");

    @ArchTest
    static final ArchRule jsonStaysInTheCatalogueAndAtTheEdges = noClasses()
            .that().resideOutsideOfPackages("pairwright.catalogue..", "pairwright.http..", "pairwright.cli..")
            .should().dependOnClassesThat().resideInAnyPackage("com.fasterxml.jackson..", "com.networknt..", "org.yaml.snakeyaml..");

    @ArchTest
    static final ArchRule staticFieldsNeverChange = fields().that().areStatic().should().beFinal();

    private static ArchRule onlyIn(String home, String... libraries) {
        return noClasses().that().resideOutsideOfPackage("pairwright." + home + "..")
                .should().dependOnClassesThat().resideInAnyPackage(libraries);
    }
}
