package org.plumbrow.branch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.Month;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.plumbrow.branch.UtilityFacts.Slot;

/** What the records of a branch promise by themselves. */
class BranchRecordsTest {

    @ParameterizedTest
    @CsvSource({
        "MTWTF--, Monday to Friday",
        "-TWT---, Tuesday to Thursday",
        "M---F--, Monday and Friday",
        "M-W-F--, 'Monday, Wednesday and Friday'",
        "-----SS, Saturday and Sunday",
        "------S, Sunday"
    })
    void weekdaysAreSevenLettersAndAreSaidShort(String letters, String words) {
        assertThat(Weekdays.of(letters).letters()).isEqualTo(letters);
        assertThat(Weekdays.of(letters).words()).isEqualTo(words);
    }

    @Test
    void noWeekdayIsNoCalendar() {
        assertThatThrownBy(() -> new Weekdays(Set.of())).isInstanceOf(IllegalArgumentException.class);
        assertThat(Weekdays.words(Set.of())).isEmpty();
        assertThat(Weekdays.of("M------").holds(DayOfWeek.TUESDAY)).isFalse();
    }

    @Test
    void aSlotFromToHoldsTheWholeOutage() {
        Slot slot = new Slot(new UUID(0, 1), LocalTime.of(9, 0), LocalTime.of(16, 0), Optional.empty());
        assertThat(slot.words()).isEqualTo("9:00 am to 4:00 pm");
        assertThat(slot.holds(LocalTime.of(9, 0), 90)).isTrue();
        assertThat(slot.holds(LocalTime.of(8, 59), 90)).isFalse();
        assertThat(slot.holds(LocalTime.of(14, 30), 90)).isTrue();
        assertThat(slot.holds(LocalTime.of(14, 31), 90)).isFalse();
        assertThat(slot.latestBack()).isEqualTo(LocalTime.of(16, 0));
    }

    @Test
    void aSlotWithBackByHoldsTheBeginningBetweenItsTimesAndTheEndByThen() {
        Slot slot =
                new Slot(new UUID(0, 1), LocalTime.of(8, 0), LocalTime.of(10, 0), Optional.of(LocalTime.of(15, 30)));
        assertThat(slot.words()).isEqualTo("off between 8:00 am and 10:00 am, back by 3:30 pm");
        assertThat(slot.holds(LocalTime.of(10, 0), 330)).isTrue();
        assertThat(slot.holds(LocalTime.of(10, 0), 331)).isFalse();
        assertThat(slot.holds(LocalTime.of(10, 1), 60)).isFalse();
        assertThat(slot.holds(LocalTime.of(8, 0), 720)).as("past midnight").isFalse();
    }

    /**
     * One degree of latitude is 60 nautical miles of 1.15078 statute miles, by definition of the nautical mile (to 0.1
     * %); at 60 degrees north a degree of longitude is half of one at the equator.
     */
    @Test
    void travelIsTheGreatCircleTimesTheRoadFactorByTheSpeed() {
        Travel straight = new Travel(60, 1);
        assertThat(straight.minutesBetween(41, -77, 42, -77)).isCloseTo(69.05, within(0.07));
        assertThat(straight.minutesBetween(60, 0, 60, 1))
                .isCloseTo(straight.minutesBetween(0, 0, 0, 1) / 2, within(0.01));
        assertThat(Travel.USUAL.minutesBetween(41, -77, 42, -77)).isCloseTo(69.05 * 1.3 / 45 * 60, within(0.2));
        assertThat(straight.minutesBetween(41, -77, 41, -77)).isZero();
    }

    @Test
    void theLostShareIsLostHalfDaysOfTheMonthsWorkingOnes() {
        WeatherTable table =
                new WeatherTable(Map.of(WeatherFamily.ROOF, new WeatherTable.Row(Collections.nCopies(12, 6.0), 0)));
        // 5 days a week are 10 half-days, times 4.348 weeks a month: 43.5
        assertThat(table.lostShare(WeatherFamily.ROOF, Month.MAY, Weekdays.MONDAY_TO_FRIDAY))
                .isCloseTo(6 / 43.48, within(0.0001));
        assertThat(table.lostShare(WeatherFamily.GROUND, Month.MAY, Weekdays.MONDAY_TO_FRIDAY))
                .isZero();
        WeatherTable flood =
                new WeatherTable(Map.of(WeatherFamily.ROOF, new WeatherTable.Row(Collections.nCopies(12, 40.0), 0)));
        assertThat(flood.lostShare(WeatherFamily.ROOF, Month.MAY, Weekdays.of("M------")))
                .isEqualTo(0.9);
    }

    @Test
    void hoursOutOfOrderCannotBeBuilt() {
        LocalTime seven = LocalTime.of(7, 0);
        assertThatThrownBy(() -> new WorkHours(seven, LocalTime.NOON, LocalTime.of(11, 0), LocalTime.of(17, 0)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new WorkHours(seven, seven, LocalTime.NOON, LocalTime.of(17, 0)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void onlyWhatReadsDifferentIsAChange() {
        List<Written> before = List.of(Written.of("Name", "name", "A"), Written.of("Size", "size", 4));
        List<Written> after = List.of(Written.of("Name", "name", "A"), Written.of("Size", "size", 5));
        assertThat(Written.changes(before, after)).containsExactly(new Written.Change("Size", "4", "5"));
        assertThat(Written.changes(List.of(), after)).hasSize(2);
        assertThat(Written.figure(45.0)).hasToString("45");
        assertThat(Written.figure(100.0)).hasToString("100");
        assertThat(Written.figure(0.375)).hasToString("0.375");
    }
}
