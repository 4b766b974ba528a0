package org.plumbrow.schedule.plan;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.branch.PlanningSettings;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.planning.Absence;
import org.plumbrow.crew.Away;
import org.plumbrow.crew.CrewFacts;
import org.plumbrow.crew.Crews;
import org.plumbrow.crew.CrewsOfBranch;
import org.plumbrow.crew.EquipmentFacts;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.schedule.activity.ActivityList;
import org.plumbrow.schedule.activity.ActivityRefresh;
import org.plumbrow.schedule.activity.JobActivities;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Reads everything that a plan of a branch is made from, in a number of queries that does not grow with the branch. */
@Service
public class PlanInputs {

    /** What a crew that starts or ends on a date is called before and after. */
    private static final String NOT_THERE = "not in the branch";

    private final BranchSettings settings;
    private final Crews crews;
    private final Projects projects;
    private final ActivityList activities;
    private final ActivityRefresh refresh;
    private final Clock clock;

    PlanInputs(
            BranchSettings settings,
            Crews crews,
            Projects projects,
            ActivityList activities,
            ActivityRefresh refresh,
            Clock clock) {
        this.settings = settings;
        this.crews = crews;
        this.projects = projects;
        this.activities = activities;
        this.refresh = refresh;
        this.clock = clock;
    }

    /** With the activities derived anew and stored: what a run computes with. */
    @Transactional(propagation = Propagation.MANDATORY)
    BranchProblem refreshed(UUID branchId) {
        PlanningSettings with = settings.forPlanning(branchId);
        return problem(with, refresh.branch(branchId, with));
    }

    /** As things are stored: what a page computes a change with. */
    @Transactional(readOnly = true)
    public BranchProblem stored(UUID branchId) {
        PlanningSettings with = settings.forPlanning(branchId);
        return problem(with, activities.read(projects.openUnchecked(branchId), with));
    }

    /** With one project more that is not in the plan yet: can its promise be kept? */
    @Transactional(readOnly = true)
    public BranchProblem with(ProjectFacts project) {
        PlanningSettings with = settings.forPlanning(project.branchId());
        List<ProjectFacts> open = projects.openUnchecked(project.branchId());
        boolean known = open.stream().anyMatch(other -> other.id().equals(project.id()));
        return problem(with, known ? activities.read(open, with) : activities.readAnd(open, project, with));
    }

    private BranchProblem problem(PlanningSettings with, List<JobActivities> jobs) {
        ZonedDateTime now = clock.instant().atZone(with.branch().zone());
        HalfDay today = BranchProblem.halfDayAt(now, with.branch().hours());
        CrewsOfBranch all = crews.of(with.branch().id(), today.date());
        return new BranchProblem(
                with,
                today,
                jobs,
                all.crews().stream()
                        .filter(crew -> isStillThere(crew.until(), today))
                        .map(crew -> crew(crew, today))
                        .toList(),
                all.equipment().stream()
                        .filter(machine -> isStillThere(machine.until(), today))
                        .map(machine -> machine(machine, today))
                        .toList());
    }

    private static boolean isStillThere(Optional<LocalDate> until, HalfDay today) {
        return until.filter(last -> last.isBefore(today.date())).isEmpty();
    }

    private static PlanCrew crew(CrewFacts crew, HalfDay today) {
        return new PlanCrew(
                crew.id(),
                crew.name(),
                crew.size(),
                crew.skills(),
                absences(crew.away(), crew.from(), crew.until(), today));
    }

    private static PlanEquipment machine(EquipmentFacts machine, HalfDay today) {
        return new PlanEquipment(
                machine.id(),
                machine.name(),
                machine.kind(),
                absences(machine.away(), machine.from(), machine.until(), today));
    }

    private static List<Absence> absences(List<Away> away, LocalDate from, Optional<LocalDate> until, HalfDay today) {
        List<Absence> absences = new ArrayList<>();
        away.forEach(time -> absences.add(new Absence(time.first(), time.last(), time.words())));
        if (from.isAfter(today.date())) {
            absences.add(new Absence(HalfDay.morning(today.date()), HalfDay.afternoon(from.minusDays(1)), NOT_THERE));
        }
        until.ifPresent(last -> absences.add(
                new Absence(HalfDay.morning(last.plusDays(1)), HalfDay.afternoon(last.plusYears(20)), NOT_THERE)));
        return absences;
    }
}
