package org.plumbrow.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.plumbrow.calc.Range;
import org.springframework.validation.Errors;
import org.springframework.validation.MapBindingResult;

/** What the one reader of typed fields makes of figures, versions and nonsense. */
class EnteredTest {

    private static final Range TILT = new Range(0, 90, "degrees");

    private final Errors errors = new MapBindingResult(new HashMap<>(), "form");
    private final Entered entered = new Entered(errors);

    private @Nullable String said(String field) {
        var error = errors.getFieldError(field);
        return error == null ? null : error.getDefaultMessage();
    }

    @Test
    void anEmptyFieldIsNoFigureUnlessItIsRequired() {
        assertThat(entered.maybe("tilt", "the tilt", " ", TILT)).isNull();
        assertThat(said("tilt")).isNull();
        assertThat(entered.required("tilt", "the tilt", " ", TILT)).isZero();
        assertThat(said("tilt")).isEqualTo("Write the tilt as a number from 0 to 90 degrees.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"x", "91", "-1", "NaN", "1e3", "Infinity", "1,2,3", "٣"})
    void nonsenseIsRefusedOnceWithWhatToWrite(String typed) {
        assertThat(entered.required("tilt", "the tilt", typed, TILT)).isZero();
        assertThat(errors.getFieldErrors("tilt")).hasSize(1);
        assertThat(said("tilt")).isEqualTo("Write the tilt as a number from 0 to 90 degrees.");
    }

    @ParameterizedTest
    @CsvSource({"45.0,45", "-3.5,−3.5", "1200,1200", "0.1234567,0.123457"})
    void aFigureIsWrittenAsPeopleWriteIt(double value, String written) {
        assertThat(Entered.written(value)).isEqualTo(written);
        assertThat(entered.maybe("f", "f", written, new Range(-10_000, 10_000, "")))
                .isCloseTo(value, TO_THE_DIGIT);
    }

    private static final org.assertj.core.data.Offset<Double> TO_THE_DIGIT = org.assertj.core.data.Offset.offset(1e-6);

    @Test
    void aRangeWithoutUnitEndsWithItsLimit() {
        assertThat(Entered.hint(new Range(-2, 1.5, ""))).isEqualTo("−2 to 1.5");
    }

    @Test
    void whatIsNoVersionIsTheVersionOfNothing() {
        assertThat(Entered.version("7")).isEqualTo(7);
        assertThat(Entered.version(null)).isEqualTo(Entered.version("seven")).isNotIn(-1L, 0L);
    }
}
