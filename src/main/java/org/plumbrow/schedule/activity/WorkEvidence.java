package org.plumbrow.schedule.activity;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.plumbrow.branch.BranchFacts;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.calc.calendar.Half;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.duration.DoneWork;
import org.plumbrow.calc.duration.ProjectActivity;
import org.plumbrow.calc.duration.WorkPart;
import org.plumbrow.crew.CrewFacts;
import org.plumbrow.crew.Crews;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * Writes what an activity's work took. Daily reports count before dates: they know the hours and how much was done. Without
 * any, work that is recorded as begun and done by a crew took the working half-days between. What only a stage says is
 * done teaches nothing.
 */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class WorkEvidence {

    private final ActivityRefresh refresh;
    private final BranchSettings settings;
    private final Crews crews;
    private final JdbcClient jdbc;

    WorkEvidence(ActivityRefresh refresh, BranchSettings settings, Crews crews, JdbcClient jdbc) {
        this.refresh = refresh;
        this.settings = settings;
        this.crews = crews;
        this.jdbc = jdbc;
    }

    /** @param share of the activity that was done @param taken days by the days planned for all of it */
    private record Took(double share, double taken, LocalDate on, boolean fromReports) {}

    void renew(Activity activity) {
        if (activity.isWait()) {
            return;
        }
        jdbc.sql("delete from finished_work where activity_id = ?")
                .param(activity.id())
                .update();
        Recorded recorded = activity.recorded();
        List<Reported> reports = reports(activity.id());
        if (reports.isEmpty()
                && (recorded.finished().isEmpty() || recorded.crewId().isEmpty())) {
            return;
        }
        refresh.project(activity.projectId()).items().stream()
                .filter(item -> item.row().id().equals(activity.id()))
                .findFirst()
                .ifPresent(item -> write(activity, item.derived(), took(activity, item.derived(), reports)));
    }

    private Map<UUID, Took> took(Activity activity, ProjectActivity derived, List<Reported> reports) {
        BranchFacts branch = settings.facts(activity.branchId());
        Map<UUID, Took> byCrew = byReports(derived, reports, branch.hours().minutesOnSite() / 60.0);
        Recorded recorded = activity.recorded();
        if (byCrew.isEmpty()
                && recorded.finished().isPresent()
                && recorded.crewId().isPresent()) {
            UUID crewId = recorded.crewId().get();
            crews.crew(crewId).ifPresent(crew -> byCrew.put(crewId, byDates(recorded, derived, branch, crew)));
        }
        return byCrew;
    }

    private static Took byDates(Recorded recorded, ProjectActivity derived, BranchFacts branch, CrewFacts crew) {
        HalfDay first = recorded.started().orElseThrow();
        HalfDay last = recorded.finished().orElseThrow();
        double days = branch.workDays().workingDaysIn(first.date(), last.date());
        days -= first.half() == Half.AFTERNOON ? 0.5 : 0;
        days -= last.half() == Half.MORNING ? 0.5 : 0;
        double planned = derived.daysFor(crew.size()).typical();
        return new Took(1, Math.max(0.5, days) / planned, last.date(), false);
    }

    private record Reported(UUID crewId, LocalDate day, int people, double hours, double quantity) {}

    /** Lines that say how much was done, and the hours of days on which nothing was. */
    private List<Reported> reports(UUID activityId) {
        return jdbc.sql("""
                select r.crew_id, r.day, r.people, l.hours, coalesce(l.quantity, 0) as quantity
                  from daily_report_line l join daily_report r on r.id = l.report_id
                 where l.activity_id = ? order by r.day
                """).param(activityId).query(Reported.class).list();
    }

    private static Map<UUID, Took> byReports(ProjectActivity derived, List<Reported> reports, double hoursOnSite) {
        double whole = derived.counted().map(WorkPart.Counted::amount).orElse(0.0);
        Map<UUID, Took> byCrew = new HashMap<>();
        for (Reported line : reports) {
            double share = whole == 0 ? 0 : line.quantity / whole;
            double planned = derived.daysFor(line.people).typical();
            Took took = new Took(share, line.hours / hoursOnSite / planned, line.day, true);
            byCrew.merge(line.crewId, took, (a, b) -> new Took(a.share + b.share, a.taken + b.taken, b.on, true));
        }
        byCrew.values().removeIf(took -> took.share == 0);
        return byCrew;
    }

    private void write(Activity activity, ProjectActivity derived, Map<UUID, Took> byCrew) {
        byCrew.forEach((crewId, took) -> derived.parts().stream()
                .filter(WorkPart.Counted.class::isInstance)
                .map(WorkPart.Counted.class::cast)
                .forEach(part -> write(activity, crewId, part, took)));
    }

    private void write(Activity activity, UUID crewId, WorkPart.Counted part, Took took) {
        DoneWork work = DoneWork.of(part.rate(), part.amount(), took.share, took.taken);
        jdbc.sql("""
                insert into finished_work (activity_id, rate_code, crew_id, branch_id, project_id, quantity, crew_days,
                                           done_on, from_reports)
                values (:activity, :rate, :crew, :branch, :project, :quantity, :days, :on, :reports)
                """)
                .param("activity", activity.id())
                .param("rate", part.rate().code())
                .param("crew", crewId)
                .param("branch", activity.branchId())
                .param("project", activity.projectId())
                .param("quantity", work.quantity())
                .param("days", work.crewDays())
                .param("on", took.on)
                .param("reports", took.fromReports)
                .update();
    }
}
