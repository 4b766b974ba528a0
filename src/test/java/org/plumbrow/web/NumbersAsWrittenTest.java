package org.plumbrow.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumbersAsWrittenTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1,250       | 1250
            1250        | 1250
            1 250       | 1250
            121 V       | 121
            121.4V      | 121.4
            −4          | -4
            -4 °F       | -4
            +3          | 3
            $18,240.50  | 18240.50
            .5          | 0.5
            12,345,678  | 12345678
            62 %        | 62
            """)
    void readsANumberAsPeopleWriteIt(String written, BigDecimal expected) {
        assertThat(NumbersAsWritten.read(written)).isEqualByComparingTo(expected);
    }

    @ParameterizedTest
    @ValueSource(strings = {"two hours", "", "1,25", "12 34", "1.2.3", "5 to 7", "--4", "1e3 x y", "3,5"})
    void refusesWhatIsNotOneNumber(String written) {
        assertThatThrownBy(() -> NumbersAsWritten.read(written)).isInstanceOf(NumberFormatException.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1.5", "99999999999"})
    void aWholeNumberMayNotCarryAFractionOrOutgrowItsField(String written) {
        assertThatThrownBy(() -> NumbersAsWritten.read(written, Integer.class))
                .isInstanceOf(NumberFormatException.class);
    }
}
