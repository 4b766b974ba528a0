package org.plumbrow.design.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.plumbrow.calc.electrical.Check;
import org.plumbrow.calc.electrical.Verdict;
import org.plumbrow.design.part.Part;

/** Every check of a design, of whatever part, shuts exactly one item of the gate. */
class ItemsOfChecksTest {

    private static Check failing(String subject) {
        return Check.said(subject, "house rule", Verdict.FAIL, subject + ".", "Change it.");
    }

    @ParameterizedTest
    @EnumSource(Part.class)
    void aCheckThatNoWordsKnowShutsTheItemOfItsPart(Part part) {
        Check check = failing("something that nobody has named yet");
        List<DesignChecks.Group> groups = List.of(new DesignChecks.Group("Group", part, List.of(check)));
        assertThat(ItemsOfChecks.items().stream()
                        .filter(item -> ItemsOfChecks.of(item, groups).contains(check)))
                .hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({
        "STRINGS, INV 1 input 1: voltage in the cold, designed.1",
        "STRINGS, INV 1 input 1: strings alike, designed.3",
        "STRINGS, A: modules in strings, designed.3",
        "STRINGS, INV 1 input 1: fuses of the strings, designed.3",
        "RUNS, R1: voltage drop, designed.5",
        "RUNS, R1: cover, designed.12",
        "RUNS, R1: ampacity, designed.4",
        "CONNECTION, Disconnect to meter, designed.9",
        "CONNECTION, Service voltage, designed.7",
        "CONNECTION, Generator and array, designed.20"
    })
    void wordsComeBeforeTheirPart(Part part, String subject, String item) {
        assertThat(ItemsOfChecks.item(part, failing(subject))).isEqualTo(item);
    }

    @Test
    void noCheckOfTheExampleIsLostOrCountedTwice() {
        List<DesignChecks.Group> groups = DesignChecks.of(new ExampleDesign().facts());
        long all = groups.stream().mapToLong(group -> group.checks().size()).sum();
        List<Check> counted = ItemsOfChecks.items().stream()
                .flatMap(item -> ItemsOfChecks.of(item, groups).stream())
                .toList();
        assertThat(counted).hasSize((int) all);
        Set<Check> once = new HashSet<>(counted);
        assertThat(groups.stream().flatMap(group -> group.checks().stream())).allMatch(once::contains);
        assertThat(Arrays.asList(Part.values())).hasSizeGreaterThan(8);
    }
}
