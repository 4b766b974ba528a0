package org.plumbrow.schedule.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.planning.Absence;
import org.plumbrow.schedule.activity.JobActivities;

/** A branch with one thing otherwise. Pure. */
public final class BranchVariant {

    private final BranchProblem branch;

    public BranchVariant(BranchProblem branch) {
        this.branch = branch;
    }

    /** The last of so many of the branch's working days, the first one counted if it is one. */
    public static LocalDate lastOf(BranchProblem branch, LocalDate first, int workingDays) {
        return branch.settings().branch().calendar().after(first.minusDays(1), workingDays);
    }

    public BranchProblem crewAway(UUID crewId, LocalDate first, int workingDays) {
        Absence away = away(first, workingDays);
        return with(
                branch.jobs(),
                branch.crews().stream()
                        .map(crew -> crew.id().equals(crewId)
                                ? new PlanCrew(
                                        crew.id(),
                                        crew.name(),
                                        crew.people(),
                                        crew.skills(),
                                        and(crew.absences(), away))
                                : crew)
                        .toList(),
                branch.equipment());
    }

    public BranchProblem machineAway(UUID machineId, LocalDate first, int workingDays) {
        Absence away = away(first, workingDays);
        return with(
                branch.jobs(),
                branch.crews(),
                branch.equipment().stream()
                        .map(machine -> machine.id().equals(machineId)
                                ? new PlanEquipment(
                                        machine.id(), machine.name(), machine.kind(), and(machine.absences(), away))
                                : machine)
                        .toList());
    }

    /** A second crew like one that there is, from that day on. */
    public BranchProblem crewLike(UUID crewId, UUID newId, String name, LocalDate from) {
        List<PlanCrew> crews = new ArrayList<>(branch.crews());
        branch.crews().stream()
                .filter(crew -> crew.id().equals(crewId))
                .map(crew -> new PlanCrew(newId, name, crew.people(), crew.skills(), before(from)))
                .findFirst()
                .ifPresent(crews::add);
        return with(branch.jobs(), crews, branch.equipment());
    }

    public BranchProblem withJob(JobActivities job) {
        List<JobActivities> jobs = new ArrayList<>(branch.jobs());
        jobs.add(job);
        return with(jobs, branch.crews(), branch.equipment());
    }

    private Absence away(LocalDate first, int workingDays) {
        return new Absence(
                HalfDay.morning(first), HalfDay.afternoon(lastOf(branch, first, workingDays)), "thought of as away");
    }

    private List<Absence> before(LocalDate from) {
        LocalDate today = branch.today().date();
        return from.isAfter(today)
                ? List.of(new Absence(HalfDay.morning(today), HalfDay.afternoon(from.minusDays(1)), "not there yet"))
                : List.of();
    }

    private static List<Absence> and(List<Absence> known, Absence more) {
        List<Absence> all = new ArrayList<>(known);
        all.add(more);
        return all;
    }

    private BranchProblem with(List<JobActivities> jobs, List<PlanCrew> crews, List<PlanEquipment> equipment) {
        return new BranchProblem(branch.settings(), branch.today(), jobs, crews, equipment);
    }
}
