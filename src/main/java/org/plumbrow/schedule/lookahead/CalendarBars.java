package org.plumbrow.schedule.lookahead;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.plumbrow.calc.duration.ActivityCode;
import org.plumbrow.schedule.lookahead.Lanes.Piece;
import org.plumbrow.schedule.plan.PlannedPromise;
import org.plumbrow.schedule.plan.PlannedRow;
import org.plumbrow.schedule.plan.PromiseWords;

/**
 * The bars of the crew calendar: each work is a bar of its own, as each is moved by itself. Its shape says how the
 * promise of its project stands, or that it is begun or done.
 */
final class CalendarBars implements Bars {

    private static final int SHAPE_PX = 18;
    private static final String BEGUN = "UNDERWAY";

    private final Sheet sheet;
    private final DayColumns columns;
    private final Map<UUID, PlannedPromise> promises;
    private final boolean mayMove;

    /** @param mayMove whether who looks may move what has not begun */
    CalendarBars(Sheet sheet, boolean mayMove) {
        this.sheet = sheet;
        columns = sheet.columns();
        promises = sheet.plan().promises().stream()
                .collect(Collectors.toMap(PlannedPromise::projectId, Function.identity()));
        this.mayMove = mayMove;
    }

    @Override
    public List<Piece> of(List<PlannedRow> booked) {
        List<Piece> bars = new ArrayList<>();
        for (PlannedRow row : booked) {
            int from = columns.at(row.start());
            int to = columns.behind(row.finish());
            if (from < to) {
                bars.add(new Piece(from, to, kind(row), face(row, to - from)));
            }
        }
        return bars;
    }

    private static Cell.Kind kind(PlannedRow row) {
        return row.code() == ActivityCode.CUTOVER ? Cell.Kind.POWER_OFF : Cell.Kind.JOB;
    }

    private Face face(PlannedRow row, int halfDays) {
        ProjectLabel project = sheet.projects().getOrDefault(row.projectId(), ProjectLabel.unknown(row.projectId()));
        boolean ahead = !row.isDone()
                && !row.boundKind().equals(BEGUN)
                && !row.start().isBefore(sheet.plan().head().first());
        boolean movable = mayMove && ahead;
        String page = project.schedule() + "/" + row.key();
        return new Face(
                project.fitting(row.words(), halfDays * columns.span().halfDayPx() - SHAPE_PX),
                "%s, %s, %s, %s%s%s"
                        .formatted(
                                project.name(),
                                row.words(),
                                CrewBars.span(row.start(), row.finish()),
                                state(row, ahead),
                                row.code() == ActivityCode.CUTOVER ? ", power off" : "",
                                row.isPinned() ? ", start settled by hand" : ""),
                Optional.of(movable ? page + "/move" : page),
                shape(row, ahead),
                row.isPinned(),
                movable);
    }

    private String state(PlannedRow row, boolean ahead) {
        if (!ahead) {
            return row.isDone() ? "done" : "begun";
        }
        return Optional.ofNullable(promises.get(row.projectId()))
                .map(promise -> "planned, promise " + PromiseWords.outlook(promise))
                .orElse("planned, nothing promised");
    }

    /** Square: planned, begun or done; triangle: planned for a promise that is at risk or breaks. */
    private String shape(PlannedRow row, boolean ahead) {
        if (!ahead) {
            return row.isDone() ? "done" : "part";
        }
        return Optional.ofNullable(promises.get(row.projectId()))
                .map(PlannedPromise::outlook)
                .map(outlook -> switch (outlook) {
                    case HOLDS, NO_DATE -> "todo";
                    case AT_RISK -> "risk";
                    case BREAKS -> "trouble";
                })
                .orElse("todo");
    }
}
