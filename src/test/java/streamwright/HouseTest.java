package streamwright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Data flows one way through the packages; this says which package may know which. */
class HouseTest {
    private static final JavaClasses HOUSE = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("streamwright");

    private static final Map<String, Set<String>> MAY_KNOW = Map.of(
            "yard", Set.of(),
            "plan", Set.of("yard"),
            "physics", Set.of("yard"),
            "layout", Set.of("yard", "plan", "physics"),
            "solve", Set.of("yard", "plan", "physics", "layout"),
            "check", Set.of("yard", "plan"),
            "file", Set.of("yard", "plan"),
            "reason", Set.of("yard", "plan", "physics", "layout", "check", "solve"),
            "report", Set.of("yard", "plan", "physics", "layout", "check", "file", "reason"),
            "cli", Set.of("yard", "plan", "physics", "layout", "solve", "check", "file", "reason", "report"));

    static Stream<String> rooms() {
        return MAY_KNOW.keySet().stream().sorted();
    }

    @ParameterizedTest
    @MethodSource("rooms")
    void roomKnowsOnlyWhatItMay(String room) {
        var hidden = rooms().filter(other -> !other.equals(room))
                .filter(other -> !MAY_KNOW.getOrDefault(room, Set.of()).contains(other))
                .map(HouseTest::inside)
                .toArray(String[]::new);
        noClasses()
                .that()
                .resideInAPackage(inside(room))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(hidden)
                // a room may not be built yet
                .allowEmptyShould(true)
                .check(HOUSE);
    }

    @Test
    void everyClassLivesInARoom() {
        classes()
                .should()
                .resideInAnyPackage(rooms().map(HouseTest::inside).toArray(String[]::new))
                .check(HOUSE);
    }

    @Test
    void roomsFormNoCycle() {
        slices().matching("streamwright.(*)..").should().beFreeOfCycles().check(HOUSE);
    }

    @Test
    void onlySolveKnowsTheSolverLibrary() {
        noClasses()
                .that()
                .resideOutsideOfPackage(inside("solve"))
                .should()
                .dependOnClassesThat()
                .resideInAPackage("com.google.ortools..")
                .check(HOUSE);
    }

    /** The audit can disagree with the planner only while they share nothing but data types. */
    @Test
    void checkNeedsNothingButDataTypesAndGeometry() {
        var known = List.of("java..", "org.jspecify..", "org.locationtech.jts..");
        var ours = Stream.of("check", "yard", "plan").map(HouseTest::inside);
        classes()
                .that()
                .resideInAPackage(inside("check"))
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(Stream.concat(known.stream(), ours).toArray(String[]::new))
                .allowEmptyShould(true)
                .check(HOUSE);
    }

    @Test
    void onlyCliPrints() {
        noClasses()
                .that()
                .resideOutsideOfPackage(inside("cli"))
                .should(ACCESS_STANDARD_STREAMS)
                .allowEmptyShould(true)
                .check(HOUSE);
    }

    private static String inside(String room) {
        return "streamwright." + room + "..";
    }
}
