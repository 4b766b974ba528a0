package org.plumbrow.schedule.lookahead;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Predicate;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.duration.ActivityCode;
import org.plumbrow.schedule.forecast.MilestoneForecast;
import org.plumbrow.schedule.plan.PlannedPromise;
import org.plumbrow.schedule.plan.PlannedRow;

/** Draws what was promised on the days of the grid. */
final class PromiseLines {

    private static final int PX = 14;

    private final DayColumns columns;
    private final Map<UUID, ProjectLabel> projects;
    private final Map<UUID, List<PlannedRow>> rows;
    private final Map<UUID, MilestoneForecast> forecasts;

    PromiseLines(Sheet sheet) {
        columns = sheet.columns();
        projects = sheet.projects();
        rows = sheet.rowsByProject();
        forecasts = sheet.forecasts();
    }

    PromiseLine of(PlannedPromise promise) {
        List<PlannedRow> own = rows.getOrDefault(promise.projectId(), List.of());
        int post = columns.behind(HalfDay.afternoon(promise.promisedOn()));
        int planned = promise.finish().map(columns::behind).orElse(Integer.MAX_VALUE);
        ProjectLabel project = projects.get(promise.projectId());
        boolean breaks = promise.outlook() == PlannedPromise.Outlook.BREAKS;
        Optional<MilestoneForecast> forecast = Optional.ofNullable(forecasts.get(promise.projectId()));
        return new PromiseLine(
                project,
                LookAheadWords.shape(promise),
                LookAheadWords.outlook(promise),
                words(project, promise)
                        + forecast.map(one -> "; " + LookAheadWords.likely(one)).orElse(""),
                strokes(own, row -> row.isWait() && !row.isDone()),
                boxes(own, row -> row.crewId().isPresent() && row.code() != ActivityCode.CUTOVER, 16, 26),
                boxes(own, row -> row.code() == ActivityCode.CUTOVER && !row.isDone(), 14, 28),
                breaks && post < columns.halfDays() ? box(post, Math.min(planned, columns.halfDays()), 0, 48) : "",
                forecast.map(one -> end(one.evenChance())).orElse(-1),
                forecast.map(this::range).orElse(""),
                forecast.map(LookAheadWords::chance).orElse(""),
                isShown(post, promise.promisedOn()) ? Math.min(post * PX, columns.halfDays() * PX - 2) : -1,
                DayWords.of(promise.promisedOn()),
                columns.halfDays() * PX);
    }

    /** Where a day ends; negative outside the weeks shown. */
    private int end(LocalDate day) {
        int place = columns.behind(HalfDay.afternoon(day));
        return isShown(place, day) ? place * PX - 7 : -1;
    }

    private String range(MilestoneForecast forecast) {
        int from = end(forecast.evenChance());
        if (from < 0) {
            return "";
        }
        int to = end(forecast.fourInFive());
        return to < 0
                ? "M%d 39H%d".formatted(from, columns.halfDays() * PX)
                : "M%d 39H%dM%d 34v10".formatted(from, to, to);
    }

    private boolean isShown(int place, LocalDate day) {
        return place <= columns.halfDays()
                && place > 0
                && !day.isAfter(columns.last())
                && !day.isBefore(columns.first());
    }

    private static String words(ProjectLabel project, PlannedPromise promise) {
        return "%s: %s promised %s; %s"
                .formatted(
                        project.name(),
                        promise.milestone(),
                        DayWords.of(promise.promisedOn()),
                        promise.finish()
                                .map(finish -> "planned " + DayWords.of(finish.date()) + ", "
                                        + LookAheadWords.outlook(promise))
                                .orElse("no date"));
    }

    private String strokes(List<PlannedRow> own, Predicate<PlannedRow> which) {
        StringBuilder path = new StringBuilder();
        own.stream().filter(which).forEach(row -> {
            int from = columns.at(row.start());
            int to = columns.behind(row.finish());
            if (from < to) {
                path.append("M%d 21H%d".formatted(from * PX + 2, to * PX - 2));
            }
        });
        return path.toString();
    }

    private String boxes(List<PlannedRow> own, Predicate<PlannedRow> which, int top, int bottom) {
        StringBuilder path = new StringBuilder();
        own.stream()
                .filter(which)
                .forEach(row -> path.append(box(columns.at(row.start()), columns.behind(row.finish()), top, bottom)));
        return path.toString();
    }

    private static String box(int from, int to, int top, int bottom) {
        return from < to ? "M%d %dH%dV%dH%dz".formatted(from * PX + 1, top, to * PX - 1, bottom, from * PX + 1) : "";
    }
}
