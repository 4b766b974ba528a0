package org.plumbrow.calc.outage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Lessons with their vacations, counted out by hand on the calendar of February 2027 (the first is a Monday). */
class BlackoutTest {

    private static final Blackout LESSONS = Blackout.weekly(
            EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY), LocalTime.of(7, 30), LocalTime.of(15, 30), "lessons");

    private static LocalDate february(int day) {
        return LocalDate.of(2027, 2, day);
    }

    private static long days(List<Blackout> blackouts) {
        return february(1)
                .datesUntil(LocalDate.of(2027, 3, 1))
                .filter(day -> blackouts.stream().anyMatch(one -> one.concerns(day)))
                .count();
    }

    @Test
    void lessonsRestInVacations() {
        List<Blackout> left = LESSONS.outside(
                List.of(new DaySpan(february(18), february(22)), new DaySpan(february(15), february(19))));
        assertThat(days(List.of(LESSONS))).isEqualTo(20);
        assertThat(days(left)).isEqualTo(14);
        assertThat(left).noneMatch(one -> one.concerns(february(15)) || one.concerns(february(22)));
        assertThat(left).anyMatch(one -> one.concerns(february(12)));
        assertThat(left).anyMatch(one -> one.concerns(february(23)));
    }

    @Test
    void withoutVacationsTheyStayAsTheyAre() {
        assertThat(LESSONS.outside(List.of())).containsExactly(LESSONS);
    }

    @Test
    void aVacationOverAllOfThemLeavesNone() {
        Blackout week = Blackout.allDay(february(1), february(5), "exams");
        assertThat(week.outside(List.of(new DaySpan(february(1), february(5))))).isEmpty();
    }

    @Test
    void aVacationThatEndsBeforeItBeginsIsRefused() {
        assertThatThrownBy(() -> new DaySpan(february(5), february(4)))
                .hasMessage("the last day lies before the first");
    }
}
