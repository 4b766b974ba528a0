package org.plumbrow.schedule.lookahead;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.duration.ActivityCode;
import org.plumbrow.schedule.forecast.MilestoneForecast;
import org.plumbrow.schedule.plan.PlannedPromise;
import org.plumbrow.schedule.plan.PlannedRow;
import org.plumbrow.schedule.plan.PromiseWords;

/** Draws what was promised on the days of the grid. */
final class PromiseLines {

    private final DayColumns columns;
    private final int px;
    private final List<PlannedPromise> promises;
    private final Map<UUID, ProjectLabel> projects;
    private final Map<UUID, List<PlannedRow>> rows;
    private final Map<UUID, MilestoneForecast> forecasts;

    PromiseLines(Sheet sheet) {
        columns = sheet.columns();
        px = columns.span().halfDayPx();
        promises = sheet.plan().promises();
        projects = sheet.projects();
        rows = sheet.rowsByProject();
        forecasts = sheet.forecasts();
    }

    /** Of each promise that falls due in the weeks shown, does not hold, or has crews at work in them. */
    List<PromiseLine> drawnWithWork() {
        Set<UUID> atWork = rows.entrySet().stream()
                .filter(project -> project.getValue().stream().anyMatch(this::isWorkShown))
                .map(Map.Entry::getKey)
                .collect(Collectors.toSet());
        return drawn(promise -> matters(promise) || atWork.contains(promise.projectId()));
    }

    private boolean isWorkShown(PlannedRow row) {
        return row.crewId().isPresent() && columns.at(row.start()) < columns.behind(row.finish());
    }

    /** Of each promise that falls due in the weeks shown or does not hold. */
    List<PromiseLine> drawn() {
        return drawn(this::matters);
    }

    private boolean matters(PlannedPromise promise) {
        return !promise.promisedOn().isAfter(columns.last()) || promise.outlook() != PlannedPromise.Outlook.HOLDS;
    }

    private List<PromiseLine> drawn(Predicate<PlannedPromise> which) {
        return promises.stream()
                .filter(promise -> projects.containsKey(promise.projectId()))
                .filter(which)
                .map(this::of)
                .toList();
    }

    private PromiseLine of(PlannedPromise promise) {
        List<PlannedRow> own = rows.getOrDefault(promise.projectId(), List.of());
        int post = columns.behind(HalfDay.afternoon(promise.promisedOn()));
        int planned = promise.finish().map(columns::behind).orElse(Integer.MAX_VALUE);
        ProjectLabel project = projects.get(promise.projectId());
        boolean breaks = promise.outlook() == PlannedPromise.Outlook.BREAKS;
        Optional<MilestoneForecast> forecast = Optional.ofNullable(forecasts.get(promise.projectId()));
        return new PromiseLine(
                project,
                PromiseWords.shape(promise),
                PromiseWords.outlook(promise),
                words(project, promise)
                        + forecast.map(one -> "; " + LookAheadWords.likely(one)).orElse(""),
                strokes(own, row -> row.isWait() && !row.isDone()),
                boxes(own, row -> row.crewId().isPresent() && row.code() != ActivityCode.CUTOVER, 16, 26),
                boxes(own, row -> row.code() == ActivityCode.CUTOVER && !row.isDone(), 14, 28),
                breaks && post < columns.halfDays() ? box(post, Math.min(planned, columns.halfDays()), 0, 48) : "",
                forecast.map(one -> end(one.evenChance())).orElse(-1),
                forecast.map(this::range).orElse(""),
                forecast.map(LookAheadWords::chance).orElse(""),
                forecast.filter(one -> end(one.evenChance()) < 0)
                        .map(one -> "; " + LookAheadWords.marks(one))
                        .orElse(""),
                isShown(post, promise.promisedOn()) ? Math.min(post * px, columns.width() - 2) : -1,
                DayWords.of(promise.promisedOn()),
                columns.width());
    }

    /** Where a day ends; negative outside the weeks shown. */
    private int end(LocalDate day) {
        int place = columns.behind(HalfDay.afternoon(day));
        return isShown(place, day) ? place * px - px / 2 : -1;
    }

    private String range(MilestoneForecast forecast) {
        int from = end(forecast.evenChance());
        if (from < 0) {
            return "";
        }
        int to = end(forecast.fourInFive());
        return to < 0 ? "M%d 39H%d".formatted(from, columns.width()) : "M%d 39H%dM%d 34v10".formatted(from, to, to);
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
                                .map(finish ->
                                        "planned " + DayWords.of(finish.date()) + ", " + PromiseWords.outlook(promise))
                                .orElse("no date"));
    }

    private String strokes(List<PlannedRow> own, Predicate<PlannedRow> which) {
        StringBuilder path = new StringBuilder();
        own.stream().filter(which).forEach(row -> {
            int from = columns.at(row.start());
            int to = columns.behind(row.finish());
            if (from < to) {
                path.append("M%d 21H%d".formatted(from * px + 2, to * px - 2));
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

    private String box(int from, int to, int top, int bottom) {
        return from < to ? "M%d %dH%dV%dH%dz".formatted(from * px + 1, top, to * px - 1, bottom, from * px + 1) : "";
    }
}
