package org.plumbrow.schedule.crewweek;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A day as it is told by somebody who does not look at the page.
 *
 * @param quantity by key of the activity; NaN for all that is left, which finishes it
 * @param hours by key of the activity
 */
public record SaidOfTheDay(
        int people,
        double hours,
        String weather,
        String trouble,
        Map<String, Double> quantity,
        Map<String, Double> hoursOf) {

    DailyReport report(ReportSheet sheet) {
        List<DailyReport.Line> lines = sheet.works().stream()
                .filter(work -> hoursOf.containsKey(work.key()))
                .map(this::line)
                .toList();
        return new DailyReport(
                sheet.version(),
                people,
                BigDecimal.valueOf(hours),
                DayWeather.valueOf(weather),
                BigDecimal.ZERO,
                trouble,
                lines);
    }

    private DailyReport.Line line(ReportSheet.Work work) {
        double whole = work.counted().map(part -> part.amount()).orElse(0.0);
        double said = Optional.ofNullable(quantity.get(work.key())).orElse(0.0);
        boolean rest = Double.isNaN(said);
        double done = rest ? Math.max(0, whole - work.before()) : Math.min(said, whole);
        return new DailyReport.Line(
                work.id(), BigDecimal.valueOf(done), BigDecimal.valueOf(hoursOf.get(work.key())), rest);
    }
}
