package org.plumbrow.calc.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class FederalHolidaysTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/calendar/federal-holidays.csv", numLinesToSkip = 2)
    void everyDayOffIsThePublishedOne(int year, String name, LocalDate observed) {
        assertThat(FederalHolidays.of(year))
                .filteredOn(holiday -> holiday.name().equals(name))
                .singleElement()
                .extracting(FederalHolidays.Holiday::observed)
                .isEqualTo(observed);
    }

    @Test
    void aYearHasElevenAndNoneIsObservedOnAWeekend() {
        IntStream.rangeClosed(2021, 2121)
                .forEach(year -> assertThat(FederalHolidays.of(year))
                        .hasSize(11)
                        .allSatisfy(holiday -> assertThat(holiday.observed().getDayOfWeek())
                                .isNotIn(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY)));
    }

    @Test
    void theNewYearOfTheYearAfterIsOffInDecemberWhenItFallsOnASaturday() {
        assertThat(FederalHolidays.closedDays(2027, 2027))
                .contains(new ClosedDay(LocalDate.of(2027, 12, 31), "New Year's Day"))
                .hasSize(12);
        assertThat(FederalHolidays.closedDays(2028, 2028)).hasSize(10);
    }
}
