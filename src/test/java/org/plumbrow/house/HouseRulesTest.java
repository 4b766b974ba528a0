package org.plumbrow.house;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.modulith.core.ApplicationModules;

/** A rule that cannot fail is none: each is held against code that breaks it (package {@code breach}, outside the application so that nothing of it is ever started). */
class HouseRulesTest {

    private static final String BREACH = "breach";
    private static final JavaClasses BREACHES = new ClassFileImporter().importPackages(BREACH);

    static Stream<Arguments> rulesAndWhatTheyFind() {
        return Stream.of(
                Arguments.of(HouseRules.THE_CORE_IS_PURE, "ImpureYield", "org.springframework"),
                Arguments.of(HouseRules.THE_CORE_ASKS_NO_CLOCK_AND_NO_CHANCE, "ImpureYield.today", "LocalDate.now"),
                Arguments.of(HouseRules.THE_CORE_ASKS_NO_CLOCK_AND_NO_CHANCE, "ImpureYield.guess", "java.util.Random"),
                Arguments.of(HouseRules.THE_CORE_TOUCHES_NOTHING_OUTSIDE, "ImpureYield.read", "java.nio.file.Path"),
                Arguments.of(HouseRules.TWO_PACKAGES_ASK_THE_SOLVER, "ImpureYield.model", "com.google.ortools"),
                Arguments.of(HouseRules.NOTHING_IS_SET, "Site.setName", ""),
                Arguments.of(HouseRules.NAMES_SAY_THE_THING, "SiteManager", ""),
                Arguments.of(HouseRules.NAMES_SAY_THE_THING, "CommonThings", ""),
                Arguments.of(HouseRules.PACKAGES_ARE_NULL_MARKED, "Forgotten", "breach.unmarked"),
                Arguments.of(HouseRules.WHAT_A_ROOM_STORES_AND_SERVES_STAYS_INSIDE, "breach.project.Site", "PUBLIC"),
                Arguments.of(HouseRules.WHAT_A_ROOM_STORES_AND_SERVES_STAYS_INSIDE, "SitePage", "PUBLIC"),
                Arguments.of(HouseRules.WHAT_A_ROOM_STORES_AND_SERVES_STAYS_INSIDE, "breach.project.Sites>", "PUBLIC"),
                Arguments.of(HouseRules.noCyclesBelow(BREACH), "Cycle detected", "branch"));
    }

    @ParameterizedTest
    @MethodSource("rulesAndWhatTheyFind")
    void theRuleFindsItsBreach(ArchRule rule, String where, String what) {
        assertThatThrownBy(() -> rule.check(BREACHES))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining(where)
                .hasMessageContaining(what);
    }

    @Test
    void theRoomsAreHeldToTheirDoors() {
        assertThat(ApplicationModules.of(BREACH, classes -> true)
                        .detectViolations()
                        .getMessages())
                .anyMatch(message -> message.contains("Cycle detected"))
                .anyMatch(message -> message.contains("Allowed targets: none"));
    }

    @Test
    void aLongClassAndALongMethodAreMeasured() {
        SourceMeasure measure = SourceMeasure.of(Path.of("src/test/java/breach"));
        assertThat(measure.classes()).anyMatch(size -> size.name().equals("CommonThings") && size.codeLines() == 8);
        assertThat(measure.methods())
                .anyMatch(size -> size.name().equals("CommonThings.java#two") && size.codeLines() == 5);
    }

    @Test
    void commentsAndBlankLinesAreNotCode() {
        String source = "int a; // one\n\n/* two\n three */\nString b = \"// four\";\nchar c = '\"'; // five\n";
        assertThat(SourceMeasure.withoutComments(source).lines().filter(line -> !line.isBlank()))
                .containsExactly("int a; ", "String b = \"// four\";", "char c = '\"'; ");
    }

    @Test
    void onlyATableOfConstantsIsExempt() {
        SourceMeasure measure = SourceMeasure.of(Path.of("src/test/java/breach"));
        assertThat(measure.classes().stream().filter(SourceMeasure.Size::exempt).map(SourceMeasure.Size::name))
                .containsExactly("PostTable");
    }
}
