package org.plumbrow.status.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The counter counts what a person counts. */
class ReadingLevelTest {

    @ParameterizedTest
    @CsvSource({
        "power, 2", "milk, 1", "measured, 2", "wires, 1", "panel, 2", "electric, 3", "company, 3", "stopped, 1",
        "freezer, 2", "evening, 3", "table, 2", "the, 1", "Wednesday, 3", "generator, 4", "needed, 2", "switches, 2"
    })
    void syllablesAreCountedAsTheyAreSpoken(String word, int syllables) {
        assertThat(ReadingLevel.syllables(word)).isEqualTo(syllables);
    }

    @Test
    void theGradeFollowsTheFormula() {
        // six words, one sentence, six syllables: 0.39 × 6 + 11.8 × 1 − 15.59
        assertThat(ReadingLevel.ofText("The cat sat on the mat.")).isCloseTo(-1.45, within(0.001));
        // four words, one sentence, twelve syllables: 0.39 × 4 + 11.8 × 3 − 15.59
        assertThat(ReadingLevel.ofText("Company company company company.")).isCloseTo(21.37, within(0.001));
    }
}
