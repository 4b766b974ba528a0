package org.plumbrow.schedule.plan;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.calendar.WorkingCalendar;
import org.plumbrow.calc.planning.Absence;
import org.plumbrow.schedule.activity.JobActivities;

/** A branch with one thing otherwise; several are made one after another. Pure. */
public final class BranchVariant {

    private final BranchProblem branch;

    public BranchVariant(BranchProblem branch) {
        this.branch = branch;
    }

    /** The last of so many of the branch's working days, the first one counted if it is one. */
    public static LocalDate lastOf(BranchProblem branch, LocalDate first, int workingDays) {
        return branch.settings().branch().workDays().after(first.minusDays(1), workingDays);
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

    /** A second machine of the same kind, from that day on. */
    public BranchProblem machineLike(UUID machineId, UUID newId, String name, LocalDate from) {
        List<PlanEquipment> machines = new ArrayList<>(branch.equipment());
        branch.equipment().stream()
                .filter(machine -> machine.id().equals(machineId))
                .map(machine -> new PlanEquipment(newId, name, machine.kind(), before(from)))
                .findFirst()
                .ifPresent(machines::add);
        return with(branch.jobs(), branch.crews(), machines);
    }

    /** Crews work on so many Saturdays, the first on or after that day; a holiday stays one and is not counted. */
    public BranchProblem onSaturdays(LocalDate from, int saturdays) {
        return new BranchProblem(
                branch.settings(),
                branch.today(),
                branch.jobs(),
                branch.crews(),
                branch.equipment(),
                branch.workDays().workedAlsoOn(saturdays(branch, from, saturdays)));
    }

    /** So many Saturdays, holidays left out; none where the branch works on Saturdays anyway. */
    public static List<LocalDate> saturdays(BranchProblem branch, LocalDate from, int many) {
        WorkingCalendar days = branch.settings().branch().calendar();
        return days.workingWeekdays().contains(DayOfWeek.SATURDAY)
                ? List.of()
                : Stream.iterate(from.with(TemporalAdjusters.nextOrSame(DayOfWeek.SATURDAY)), day -> day.plusWeeks(1))
                        .filter(day -> !days.closedDays().containsKey(day))
                        .limit(many)
                        .toList();
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
        return new BranchProblem(branch.settings(), branch.today(), jobs, crews, equipment, branch.workDays());
    }
}
