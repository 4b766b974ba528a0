package org.plumbrow.schedule.crewweek;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.branch.BranchFacts;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.duration.Spread;
import org.plumbrow.calc.duration.WorkPart;
import org.plumbrow.schedule.activity.Progress;
import org.plumbrow.schedule.activity.Recorded;
import org.plumbrow.schedule.crewweek.ReportSheet.Work;
import org.plumbrow.web.Actor;
import org.springframework.stereotype.Component;

/** What a daily report means for the activities: begun, how much is left, done. */
@Component
class ReportedProgress {

    private static final int MOST_LEFT = 400;

    private final Progress progress;
    private final BranchSettings settings;
    private final Clock clock;

    ReportedProgress(Progress progress, BranchSettings settings, Clock clock) {
        this.progress = progress;
        this.settings = settings;
        this.clock = clock;
    }

    /** @param others what the project's other reports say, by activity */
    void take(ReportSheet sheet, DailyReport report, Map<UUID, ReportRows.Before> others, Actor by) {
        for (Work work : sheet.works()) {
            Optional<DailyReport.Line> line = report.line(work.id());
            boolean was = sheet.written()
                    .flatMap(known -> known.report().line(work.id()))
                    .isPresent();
            if (line.isPresent()) {
                Recorded now = recorded(sheet, work, line.get());
                progress.reportedUnchecked(sheet.project().id(), work.key(), now, by);
            } else if (was) {
                progress.reportedUnchecked(sheet.project().id(), work.key(), takenBack(sheet, work, others), by);
            }
        }
    }

    private Recorded recorded(ReportSheet sheet, Work work, DailyReport.Line line) {
        HalfDay morning = HalfDay.morning(sheet.day());
        HalfDay start =
                work.item().row().recorded().started().filter(morning::isAfter).orElse(morning);
        Optional<UUID> crew = Optional.of(sheet.crew().id());
        if (line.done()) {
            return Recorded.done(start, HalfDay.afternoon(sheet.day()), crew);
        }
        return new Recorded(Optional.of(start), Optional.empty(), crew, left(sheet, work, line), Optional.empty());
    }

    /** An activity of which no report speaks any more is not begun, unless it was begun before that day. */
    private static Recorded takenBack(ReportSheet sheet, Work work, Map<UUID, ReportRows.Before> others) {
        Recorded known = work.item().row().recorded();
        boolean begunBefore = known.started()
                .filter(start -> start.date().isBefore(sheet.day()))
                .isPresent();
        return begunBefore || others.containsKey(work.id())
                ? new Recorded(known.started(), Optional.empty(), known.crewId(), Optional.empty(), Optional.empty())
                : Recorded.NOTHING;
    }

    /**
     * Half-days left of counted work, at this crew's pace. The plan takes the working half-days since the report off again,
     * its own day included, so a report of the same day says that day as well.
     */
    private Optional<Integer> left(ReportSheet sheet, Work work, DailyReport.Line line) {
        double whole = work.counted().map(WorkPart.Counted::amount).orElse(0.0);
        if (whole == 0 || line.quantity() == null) {
            return work.item().row().recorded().halfDaysLeft();
        }
        double done = Math.min(1, (work.before() + line.quantity().doubleValue()) / whole);
        double days = work.item()
                .derivedFor(sheet.crew().id())
                .daysFor(sheet.crew().size())
                .typical();
        BranchFacts branch = settings.facts(sheet.crew().branchId());
        LocalDate today = LocalDate.ofInstant(clock.instant(), branch.zone());
        boolean countsToday = today.equals(sheet.day()) && branch.workDays().isWorking(today);
        return Optional.of(Math.min(MOST_LEFT, Spread.halfDays((1 - done) * days) + (countsToday ? 2 : 0)));
    }
}
