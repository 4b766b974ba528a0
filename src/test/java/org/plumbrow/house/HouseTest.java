package org.plumbrow.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.plumbrow.PlumbrowApplication;
import org.springframework.modulith.core.ApplicationModules;

/** The house stands as DEVELOPERS.md says: rooms and doors, a pure core, small classes. */
class HouseTest {

    private static final JavaClasses CODE = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("org.plumbrow");

    private static final SourceMeasure SOURCES = SourceMeasure.of(Path.of("src", "main", "java"));

    @Test
    void roomsTalkOnlyThroughTheirDoors() {
        ApplicationModules.of(PlumbrowApplication.class).verify();
    }

    static Stream<ArchRule> rules() {
        return Stream.of(
                HouseRules.THE_CORE_IS_PURE,
                HouseRules.THE_CORE_ASKS_NO_CLOCK_AND_NO_CHANCE,
                HouseRules.THE_CORE_TOUCHES_NOTHING_OUTSIDE,
                HouseRules.TWO_PACKAGES_ASK_THE_SOLVER,
                HouseRules.NOTHING_IS_SET,
                HouseRules.NAMES_SAY_THE_THING,
                HouseRules.PACKAGES_ARE_NULL_MARKED,
                HouseRules.WHAT_A_ROOM_STORES_AND_SERVES_STAYS_INSIDE,
                HouseRules.noCyclesBelow("org.plumbrow"));
    }

    @ParameterizedTest
    @MethodSource("rules")
    void theHouseHolds(ArchRule rule) {
        rule.check(CODE);
    }

    @Test
    void noClassIsLongerThanThreeHundredLinesOfCode() {
        assertThat(SOURCES.classes())
                .isNotEmpty()
                .filteredOn(size -> !size.exempt() && size.codeLines() > 300)
                .isEmpty();
    }

    @Test
    void noMethodIsLongerThanSixtyLinesOfCode() {
        assertThat(SOURCES.methods())
                .isNotEmpty()
                .filteredOn(size -> size.codeLines() > 60)
                .isEmpty();
    }

    @Test
    void nineteenOfTwentyMethodsAreNoLongerThanTwentyLinesOfCode() {
        long longer =
                SOURCES.methods().stream().filter(size -> size.codeLines() > 20).count();
        assertThat(longer).isLessThanOrEqualTo(SOURCES.methods().size() / 20);
    }
}
