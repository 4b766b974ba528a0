package org.plumbrow.calc.calendar;

import static java.time.DayOfWeek.MONDAY;
import static java.time.DayOfWeek.SATURDAY;
import static java.time.DayOfWeek.SUNDAY;
import static java.time.DayOfWeek.THURSDAY;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The eleven holidays of the US federal government by rule (5 U.S.C. 6103), with the day on which each is observed:
 * one that falls on a Saturday on the Friday before, on a Sunday on the Monday after. Inauguration Day, which only
 * one district observes, is left out.
 * Limits: by today's law, so from 2021 on (Juneteenth); earlier years had ten.
 */
public final class FederalHolidays {

    private FederalHolidays() {}

    /** @param observed the working day that is off; it can lie in the neighbouring year */
    public record Holiday(String name, LocalDate date, LocalDate observed) {
        public ClosedDay closed() {
            return new ClosedDay(observed, name);
        }
    }

    /** @return the holidays whose own date lies in that year, in time */
    public static List<Holiday> of(int year) {
        return List.of(
                fixed("New Year's Day", year, Month.JANUARY, 1),
                nth("Martin Luther King Jr. Day", year, Month.JANUARY, 3, MONDAY),
                nth("Washington's Birthday", year, Month.FEBRUARY, 3, MONDAY),
                nth("Memorial Day", year, Month.MAY, -1, MONDAY),
                fixed("Juneteenth", year, Month.JUNE, 19),
                fixed("Independence Day", year, Month.JULY, 4),
                nth("Labor Day", year, Month.SEPTEMBER, 1, MONDAY),
                nth("Columbus Day", year, Month.OCTOBER, 2, MONDAY),
                fixed("Veterans Day", year, Month.NOVEMBER, 11),
                nth("Thanksgiving Day", year, Month.NOVEMBER, 4, THURSDAY),
                fixed("Christmas Day", year, Month.DECEMBER, 25));
    }

    /** @return the days off from the first to the last year, with the observed New Year's Day of the year after */
    public static List<ClosedDay> closedDays(int firstYear, int lastYear) {
        return IntStream.rangeClosed(firstYear, lastYear + 1)
                .mapToObj(FederalHolidays::of)
                .flatMap(List::stream)
                .map(Holiday::closed)
                .filter(day -> day.date().getYear() >= firstYear && day.date().getYear() <= lastYear)
                .toList();
    }

    private static Holiday fixed(String name, int year, Month month, int day) {
        LocalDate date = LocalDate.of(year, month, day);
        return new Holiday(name, date, observed(date));
    }

    private static LocalDate observed(LocalDate date) {
        if (date.getDayOfWeek() == SATURDAY) {
            return date.minusDays(1);
        }
        return date.getDayOfWeek() == SUNDAY ? date.plusDays(1) : date;
    }

    private static Holiday nth(String name, int year, Month month, int ordinal, DayOfWeek weekday) {
        LocalDate date = LocalDate.of(year, month, 1).with(TemporalAdjusters.dayOfWeekInMonth(ordinal, weekday));
        return new Holiday(name, date, date);
    }
}
