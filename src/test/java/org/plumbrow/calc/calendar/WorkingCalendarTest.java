package org.plumbrow.calc.calendar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WorkingCalendarTest {

    private static final WorkingCalendar OFFICE = WorkingCalendar.of(
            EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY), FederalHolidays.closedDays(2026, 2028));

    @Test
    void daysOffSayWhy() {
        assertThat(OFFICE.whyClosed(LocalDate.of(2026, 5, 25))).hasValue("Memorial Day");
        assertThat(OFFICE.whyClosed(LocalDate.of(2026, 5, 24))).hasValue("Sunday");
        assertThat(OFFICE.whyClosed(LocalDate.of(2026, 5, 26))).isEmpty();
    }

    @Test
    void countsForwardAndBackOverWeekendAndHoliday() {
        LocalDate friday = LocalDate.of(2026, 5, 22);
        LocalDate tuesday = LocalDate.of(2026, 5, 26);
        assertThat(OFFICE.after(friday, 1)).isEqualTo(tuesday);
        assertThat(OFFICE.before(tuesday, 1)).isEqualTo(friday);
        assertThat(OFFICE.after(friday, 0)).isEqualTo(friday);
        assertThat(OFFICE.workingDaysIn(friday, tuesday)).isEqualTo(2);
        assertThat(OFFICE.fullWorkingDaysBetween(friday, tuesday)).isZero();
    }

    @Test
    void aCalendarNobodyWorksInIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new WorkingCalendar(EnumSet.noneOf(DayOfWeek.class), Map.of()));
    }

    /** Two full working days after the day of the call, 25 May a holiday; ten before Fri, Mar 26, 2027. */
    @ParameterizedTest
    @CsvSource({
        "2, 2026-05-05, 2026-05-08",
        "2, 2026-05-28, 2026-06-02",
        "2, 2026-05-29, 2026-06-03",
        "2, 2026-05-21, 2026-05-27",
        "10, 2027-03-11, 2027-03-26"
    })
    void neitherTheDayOfSendingNorTheDayOfTheEventCounts(int days, LocalDate sent, LocalDate event) {
        Notice notice = new Notice(days, OFFICE);
        assertThat(notice.firstDayWhenSent(sent)).isEqualTo(event);
        assertThat(notice.lastDayToSendFor(event)).isEqualTo(sent);
        assertThat(notice.isMet(sent, event)).isTrue();
        assertThat(notice.isMet(sent.plusDays(1), event)).isFalse();
        assertThat(OFFICE.fullWorkingDaysBetween(sent, event)).isEqualTo(days);
    }

    @Test
    void whatIsSentOnADayOffCountsFromTheNextWorkingDay() {
        Notice notice = new Notice(3, OFFICE);
        LocalDate sunday = LocalDate.of(2026, 5, 24);
        assertThat(notice.firstDayWhenSent(sunday)).isEqualTo(notice.firstDayWhenSent(LocalDate.of(2026, 5, 26)));
    }

    @Test
    void sentOnTheLastDayTheNoticeIsJustMetWhateverTheDay() {
        for (int days = 0; days <= 12; days++) {
            Notice notice = new Notice(days, OFFICE);
            for (LocalDate event = LocalDate.of(2026, 11, 1);
                    event.isBefore(LocalDate.of(2027, 2, 1));
                    event = event.plusDays(1)) {
                LocalDate last = notice.lastDayToSendFor(event);
                assertThat(OFFICE.isWorking(last)).isTrue();
                assertThat(OFFICE.fullWorkingDaysBetween(last, event)).isEqualTo(days);
            }
        }
    }

    @Test
    void theAxisNumbersEveryWorkingHalfDayOnce() {
        WorkingAxis axis = new WorkingAxis(OFFICE, LocalDate.of(2026, 1, 3), LocalDate.of(2027, 12, 30));
        HalfDay at = HalfDay.morning(LocalDate.of(2026, 1, 1));
        int next = 0;
        while (at.date().isBefore(LocalDate.of(2028, 1, 10))) {
            boolean on = OFFICE.isWorking(at.date())
                    && !at.date().isBefore(axis.first())
                    && !at.date().isAfter(axis.last());
            assertThat(axis.holds(at)).as(at.words()).isEqualTo(on);
            assertThat(axis.atOrAfter(at)).as(at.words()).isEqualTo(next);
            assertThat(axis.atOrBefore(at)).as(at.words()).isEqualTo(on ? next : next - 1);
            if (on) {
                assertThat(axis.at(next)).isEqualTo(at);
                next++;
            }
            at = at.next();
        }
        assertThat(axis.size()).isEqualTo(next);
    }

    @Test
    void theAxisCountsDaysLikeItsCalendar() {
        WorkingAxis axis = new WorkingAxis(OFFICE, LocalDate.of(2026, 1, 3), LocalDate.of(2026, 12, 30));
        for (LocalDate day : List.of(
                LocalDate.of(2025, 12, 30),
                LocalDate.of(2026, 1, 3),
                LocalDate.of(2026, 5, 22),
                LocalDate.of(2026, 12, 30),
                LocalDate.of(2027, 1, 4))) {
            for (int days = 0; days < 300; days += 7) {
                assertThat(axis.dayAfter(day, days)).isEqualTo(OFFICE.after(day, days));
            }
        }
    }

    @Test
    void halfDaysAreInTimeAndSayTheirName() {
        HalfDay morning = HalfDay.morning(LocalDate.of(2027, 3, 12));
        assertThat(morning.next()).isEqualTo(HalfDay.afternoon(morning.date()));
        assertThat(morning.next().next())
                .isEqualTo(HalfDay.morning(morning.date().plusDays(1)));
        assertThat(morning.previous().next()).isEqualTo(morning);
        assertThat(morning.isBefore(morning.next())).isTrue();
        assertThat(morning.words()).isEqualTo("Fri, Mar 12, morning");
    }

    @Test
    void aDayOffThatIsWorkedCountsUnlessItIsClosed() {
        LocalDate saturday = LocalDate.of(2027, 3, 6);
        WorkingCalendar days = WorkingCalendar.MONDAY_TO_FRIDAY.workedAlsoOn(List.of(saturday, saturday.plusWeeks(1)));
        assertThat(days.isWorking(saturday)).isTrue();
        assertThat(days.isWorking(saturday.plusWeeks(2))).isFalse();
        assertThat(days.workingDaysIn(saturday.minusDays(5), saturday.plusDays(1)))
                .isEqualTo(6);
        WorkingCalendar closed = days.closedAlsoOn(List.of(new ClosedDay(saturday, "stock-taking")));
        assertThat(closed.isWorking(saturday)).isFalse();
        assertThat(closed.isWorking(saturday.plusWeeks(1))).isTrue();
    }
}
