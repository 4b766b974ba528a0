package org.plumbrow.schedule.crewweek;

import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.plumbrow.calc.calendar.DayWords;

/** The journal's line of a daily report; what trouble there was may name somebody, so only the report itself says it. */
final class ReportWords {

    private ReportWords() {}

    static String sentence(ReportSheet sheet, DailyReport report) {
        Map<UUID, ReportSheet.Work> works =
                sheet.works().stream().collect(Collectors.toMap(ReportSheet.Work::id, Function.identity()));
        String done = report.lines().stream()
                .map(line -> line(works.get(line.activityId()), line))
                .collect(Collectors.joining("; "));
        return "%s of %s for %s: %s. %d people, %s hours, %s.%s"
                .formatted(
                        sheet.written().isPresent() ? "Daily report, changed," : "Daily report",
                        sheet.crew().name(),
                        DayWords.withYear(sheet.day()),
                        done.isEmpty() ? "nothing done" : done,
                        report.people(),
                        ReportRows.plain(report.hours()).toPlainString(),
                        report.weather().words(),
                        report.trouble().isEmpty() ? "" : " Trouble was noted.");
    }

    private static String line(ReportSheet.Work work, DailyReport.Line line) {
        String quantity = line.quantity() == null
                ? ""
                : " " + ReportRows.plain(line.quantity()).toPlainString() + " " + work.unit();
        return work.title() + quantity + (line.done() ? ", finished" : "");
    }
}
