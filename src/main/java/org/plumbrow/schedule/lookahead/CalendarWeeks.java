package org.plumbrow.schedule.lookahead;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.plumbrow.schedule.lookahead.CalendarView.OneWeek;
import org.plumbrow.schedule.lookahead.CalendarView.RowByWeek;
import org.plumbrow.schedule.lookahead.CalendarView.WeatherWeek;

/** What the weeks of the crew calendar hold: work row by row, and what weather is expected to take. Pure. */
final class CalendarWeeks {

    /** From a fifth on a week outdoors is likely to lose a day: worth a mark. Common practice, no source. */
    private static final double RISK_FROM_SHARE = 0.2;

    private static final double LEAST_SAID = 0.05;

    private final DayColumns columns;

    CalendarWeeks(DayColumns columns) {
        this.columns = columns;
    }

    /** Each row with what touches each week; weeks and machines without anything are left out. */
    List<RowByWeek> lists(List<LookAheadView.Row> crews, List<LookAheadView.Row> machines) {
        return Stream.concat(crews.stream(), machines.stream())
                .map(row -> new RowByWeek(row, weeks(row)))
                .filter(row -> !row.weeks().isEmpty())
                .toList();
    }

    private List<OneWeek> weeks(LookAheadView.Row row) {
        int perWeek = 2 * columns.daysAWeek();
        List<OneWeek> weeks = new ArrayList<>();
        for (DayColumns.Week week : columns.weeks()) {
            int from = columns.days().indexOf(dayOf(week.first())) * 2;
            List<Cell> cells = row.lanes().stream()
                    .flatMap(lane -> touching(lane, from, from + perWeek).stream())
                    .toList();
            if (!cells.isEmpty()) {
                weeks.add(new OneWeek(week.first(), cells));
            }
        }
        return weeks;
    }

    private DayColumns.Day dayOf(LocalDate date) {
        return columns.days().stream()
                .filter(day -> day.date().equals(date))
                .findFirst()
                .orElseThrow();
    }

    /** Of the whole branch, in the weeks shown. */
    List<String> daysOff() {
        return columns.days().stream()
                .flatMap(day -> day.closed().map(why -> day.words() + ", " + why).stream())
                .toList();
    }

    private static List<Cell> touching(List<Cell> lane, int from, int to) {
        List<Cell> cells = new ArrayList<>();
        int place = 0;
        for (Cell cell : lane) {
            if (!cell.isEmpty() && cell.kind() != Cell.Kind.CLOSED && place < to && place + cell.span() > from) {
                cells.add(cell);
            }
            place += cell.span();
        }
        return cells;
    }

    /** @param lostShare of the working time outdoors that weather takes in a month, 0 to 0.9 */
    List<WeatherWeek> weather(ToDoubleFunction<Month> lostShare) {
        return columns.weeks().stream().map(week -> weather(week, lostShare)).toList();
    }

    private WeatherWeek weather(DayColumns.Week week, ToDoubleFunction<Month> lostShare) {
        int halfDays = 0;
        double lost = 0;
        for (DayColumns.Day day : columns.days()) {
            boolean within = !day.date().isBefore(week.first()) && !day.date().isAfter(week.last());
            if (within && day.closed().isEmpty()) {
                halfDays += 2;
                lost += 2 * lostShare.applyAsDouble(day.date().getMonth());
            }
        }
        return new WeatherWeek(
                lost < LEAST_SAID
                        ? "takes nothing"
                        : String.format(Locale.US, "takes about %.1f of %d half-days", lost, halfDays),
                halfDays > 0 && lost / halfDays >= RISK_FROM_SHARE);
    }
}
