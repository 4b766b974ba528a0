package org.plumbrow.schedule.lookahead;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.duration.ActivityCode;
import org.plumbrow.schedule.lookahead.Lanes.Piece;
import org.plumbrow.schedule.plan.PlannedRow;

/** The bars of one crew or machine: works of one project that follow each other on the same days are one bar. */
final class CrewBars implements Bars {

    private static final int NARROWEST_LINK = 2;

    private final DayColumns columns;
    private final Map<UUID, ProjectLabel> projects;

    CrewBars(DayColumns columns, Map<UUID, ProjectLabel> projects) {
        this.columns = columns;
        this.projects = projects;
    }

    @Override
    public List<Piece> of(List<PlannedRow> booked) {
        List<Piece> bars = new ArrayList<>();
        List<PlannedRow> visit = new ArrayList<>();
        for (PlannedRow row :
                booked.stream().sorted(Comparator.comparing(PlannedRow::start)).toList()) {
            if (!visit.isEmpty() && !goesOn(visit.get(visit.size() - 1), row)) {
                bars.add(bar(visit));
                visit.clear();
            }
            visit.add(row);
        }
        if (!visit.isEmpty()) {
            bars.add(bar(visit));
        }
        return bars;
    }

    private boolean goesOn(PlannedRow before, PlannedRow row) {
        return before.projectId().equals(row.projectId())
                && before.finish().isBefore(row.start())
                && columns.behind(before.finish()) == columns.at(row.start())
                && isPowerOff(before) == isPowerOff(row);
    }

    private static boolean isPowerOff(PlannedRow row) {
        return row.code() == ActivityCode.CUTOVER;
    }

    private Piece bar(List<PlannedRow> visit) {
        PlannedRow first = visit.get(0);
        HalfDay last = visit.get(visit.size() - 1).finish();
        int from = columns.at(first.start());
        int to = columns.behind(last);
        ProjectLabel project = projects.getOrDefault(first.projectId(), ProjectLabel.unknown(first.projectId()));
        String work = visit.stream().map(PlannedRow::words).collect(Collectors.joining(", "));
        boolean off = isPowerOff(first);
        return new Piece(
                from,
                to,
                off ? Cell.Kind.POWER_OFF : Cell.Kind.JOB,
                Face.of(
                        project.fitting(work, (to - from) * columns.span().halfDayPx()),
                        "%s, %s, %s%s"
                                .formatted(project.name(), work, span(first.start(), last), off ? ", power off" : ""),
                        to - from >= NARROWEST_LINK ? Optional.of(project.schedule()) : Optional.empty()));
    }

    /** "Mon, Mar 8 to Fri, Mar 12", "Mon, Mar 8". */
    static String span(HalfDay first, HalfDay last) {
        return first.date().equals(last.date())
                ? DayWords.of(first.date())
                : DayWords.of(first.date()) + " to " + DayWords.of(last.date());
    }
}
