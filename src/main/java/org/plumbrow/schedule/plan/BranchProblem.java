package org.plumbrow.schedule.plan;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Month;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.plumbrow.branch.PlanningSettings;
import org.plumbrow.branch.UtilityFacts;
import org.plumbrow.branch.WorkHours;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.calendar.WorkingCalendar;
import org.plumbrow.calc.duration.EquipmentKind;
import org.plumbrow.calc.duration.ProjectActivity;
import org.plumbrow.calc.duration.Skill;
import org.plumbrow.calc.duration.Spread;
import org.plumbrow.calc.planning.Activity;
import org.plumbrow.calc.planning.Crew;
import org.plumbrow.calc.planning.Equipment;
import org.plumbrow.calc.planning.EquipmentNeed;
import org.plumbrow.calc.planning.Fix;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.Predecessor;
import org.plumbrow.calc.planning.Project;
import org.plumbrow.calc.planning.Promise;
import org.plumbrow.calc.planning.WeatherAllowance;
import org.plumbrow.calc.planning.Work;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.schedule.activity.ActivityRow;
import org.plumbrow.schedule.activity.JobActivities;
import org.plumbrow.schedule.activity.Pin;
import org.plumbrow.schedule.activity.Recorded;

/**
 * What the computation is asked: the branch's projects, crews, machines and days, as the core wants them. Pure; an id of
 * the core is the text of ours.
 *
 * @param today the first half-day on which anything can begin
 * @param jobs all projects in the plan, by number
 * @param workDays on which crews and desks work; offices count the branch's own days, whatever its crews do
 */
public record BranchProblem(
        PlanningSettings settings,
        HalfDay today,
        List<JobActivities> jobs,
        List<PlanCrew> crews,
        List<PlanEquipment> equipment,
        WorkingCalendar workDays) {

    /** A plan does not look further ahead; the longest wait of the shipped table is 500 calendar days. */
    private static final int YEARS_AHEAD = 4;

    public BranchProblem {
        jobs = List.copyOf(jobs);
        crews = List.copyOf(crews);
        equipment = List.copyOf(equipment);
    }

    /** On the branch's own days. */
    BranchProblem(
            PlanningSettings settings,
            HalfDay today,
            List<JobActivities> jobs,
            List<PlanCrew> crews,
            List<PlanEquipment> equipment) {
        this(settings, today, jobs, crews, equipment, settings.branch().workDays());
    }

    /** The half-day that goes on at that moment, or the next one: after work it is tomorrow's morning. */
    static HalfDay halfDayAt(ZonedDateTime moment, WorkHours hours) {
        LocalTime time = moment.toLocalTime();
        LocalDate date = moment.toLocalDate();
        if (time.isBefore(hours.morningEnd())) {
            return HalfDay.morning(date);
        }
        return time.isBefore(hours.afternoonEnd()) ? HalfDay.afternoon(date) : HalfDay.morning(date.plusDays(1));
    }

    /** The same branch with that start settled. */
    public BranchProblem fixing(UUID activityId, Pin pin) {
        return new BranchProblem(
                settings,
                today,
                jobs.stream()
                        .map(job -> new JobActivities(
                                job.project(),
                                job.items().stream()
                                        .map(item -> item.row().id().equals(activityId)
                                                ? new JobActivities.Item(
                                                        item.derived(),
                                                        item.row().fixedAs(pin),
                                                        item.byCrew())
                                                : item)
                                        .toList()))
                        .toList(),
                crews,
                equipment,
                workDays);
    }

    /** The same branch without a project. */
    BranchProblem without(UUID projectId) {
        return new BranchProblem(
                settings,
                today,
                jobs.stream()
                        .filter(job -> !job.project().id().equals(projectId))
                        .toList(),
                crews,
                equipment,
                workDays);
    }

    public PlanningProblem toCore() {
        return new PlanningProblem(
                workDays,
                today,
                today.date().plusYears(YEARS_AHEAD),
                jobs.stream()
                        .map(job -> new Project(
                                job.project().id().toString(), job.project().name()))
                        .toList(),
                jobs.stream().flatMap(this::activities).toList(),
                crews.stream().map(BranchProblem::crew).toList(),
                kinds(),
                jobs.stream().flatMap(job -> promise(job).stream()).toList(),
                weather());
    }

    private WorkingCalendar calendar() {
        return settings.branch().calendar();
    }

    /** Machines of one kind are one as good as the other; the plan counts them, publishing names one. */
    private List<Equipment> kinds() {
        Map<EquipmentKind, List<PlanEquipment>> machines = equipment.stream()
                .collect(Collectors.groupingBy(PlanEquipment::kind, TreeMap::new, Collectors.toList()));
        List<Equipment> kinds = new ArrayList<>();
        machines.forEach((kind, all) -> kinds.add(new Equipment(
                kind.name(),
                kind.words(),
                all.size(),
                all.stream()
                        .flatMap(machine -> machine.absences().stream())
                        .map(absence -> new Equipment.Away(1, absence))
                        .toList())));
        return kinds;
    }

    private static Crew crew(PlanCrew crew) {
        return new Crew(
                crew.id().toString(),
                crew.name(),
                crew.skills().stream().map(Skill::name).collect(Collectors.toSet()),
                crew.absences());
    }

    private Stream<Activity> activities(JobActivities job) {
        Map<String, UUID> ids = new HashMap<>();
        job.items().forEach(item -> ids.put(item.row().key(), item.row().id()));
        WorkingCalendar utility = utilityDays(job.project());
        return job.items().stream().map(item -> activity(job.project(), item, ids, utility));
    }

    private Activity activity(
            ProjectFacts project, JobActivities.Item item, Map<String, UUID> ids, WorkingCalendar utility) {
        ProjectActivity derived = item.derived();
        Work work = work(item, utility);
        return new Activity(
                item.row().id().toString(),
                project.id().toString(),
                derived.words(),
                work,
                Optional.empty(),
                derived.predecessors().stream()
                        .filter(first -> ids.containsKey(first.key()))
                        .map(first -> new Predecessor(ids.get(first.key()).toString(), 0, first.lagCalendarDays()))
                        .toList(),
                needs(derived),
                derived.continuityGroup(),
                derived.outdoor(),
                fix(item.row()));
    }

    private Work work(JobActivities.Item item, WorkingCalendar utility) {
        ProjectActivity derived = item.derived();
        return switch (derived.kind()) {
            case DESK -> new Work.AtDesk(derived.days().halfDaysTypical());
            case WAIT ->
                new Work.Waiting(
                        (int) Math.round(derived.days().typical()),
                        counting(item.row(), utility),
                        derived.justInTime());
            case CREW ->
                new Work.ByCrew(
                        derived.skills().stream().map(Skill::name).collect(Collectors.toSet()), halfDaysByCrew(item));
        };
    }

    private Map<String, Integer> halfDaysByCrew(JobActivities.Item item) {
        Map<String, Integer> halfDays = new HashMap<>();
        for (PlanCrew crew : crews) {
            if (crew.people() >= item.derived().leastPeople()) {
                halfDays.put(
                        crew.id().toString(),
                        item.derivedFor(crew.id()).daysFor(crew.people()).halfDaysTypical());
            }
        }
        return halfDays;
    }

    private List<EquipmentNeed> needs(ProjectActivity derived) {
        return derived.equipment().entrySet().stream()
                .filter(need -> equipment.stream().anyMatch(machine -> machine.kind() == need.getKey()))
                .sorted(Map.Entry.comparingByKey())
                .map(need -> new EquipmentNeed(need.getKey().name(), need.getValue()))
                .toList();
    }

    private WorkingCalendar counting(ActivityRow row, WorkingCalendar utility) {
        return switch (row.counting().orElse(ActivityRow.Counting.BRANCH)) {
            case BRANCH -> calendar();
            case UTILITY -> utility;
            case CALENDAR -> WorkingCalendar.EVERY_DAY;
        };
    }

    private WorkingCalendar utilityDays(ProjectFacts project) {
        return settings.utilities().stream()
                .filter(utility -> utility.id().equals(project.site().utilityId()))
                .map(UtilityFacts::calendar)
                .findFirst()
                .orElseGet(this::calendar);
    }

    private Fix fix(ActivityRow row) {
        Recorded recorded = row.recorded();
        if (recorded.finished().isPresent()) {
            return new Fix.Done(
                    recorded.started().orElseThrow(), recorded.finished().get());
        }
        if (recorded.started().isPresent()) {
            return begun(row, recorded.started().get());
        }
        return row.pin()
                .<Fix>map(pin -> new Fix.Pinned(pin.start(), known(pin.crewId())))
                .orElse(Fix.FREE);
    }

    private Fix begun(ActivityRow row, HalfDay start) {
        Optional<LocalDate> expected = row.recorded().answerExpected();
        if (row.isWait() && expected.isPresent()) {
            // An answer that did not come on its day may come on any; the plan goes on with today.
            HalfDay answer = HalfDay.afternoon(expected.get());
            return new Fix.Expected(start, answer.isBefore(today) ? today : answer);
        }
        return new Fix.Begun(start, known(row.recorded().crewId()), row.isWait() ? 1 : halfDaysLeft(row, start));
    }

    /** A crew that has ended binds nothing any more. */
    private Optional<String> known(Optional<UUID> crewId) {
        return crewId.filter(id -> crews.stream().anyMatch(crew -> crew.id().equals(id)))
                .map(UUID::toString);
    }

    /** What was said to be left, or the whole, less the working half-days since then; at least one as long as it goes on. */
    private int halfDaysLeft(ActivityRow row, HalfDay start) {
        Optional<LocalDate> said = row.recorded()
                .halfDaysLeft()
                .flatMap(left -> row.recordedBy())
                .map(by -> by.at().atZone(settings.branch().zone()).toLocalDate());
        int from =
                row.recorded().halfDaysLeft().orElse(Spread.halfDays(row.days().typical()));
        LocalDate since = said.orElse(start.date());
        int worked = 2
                * settings.branch().workDays().workingDaysIn(since, today.date().minusDays(1));
        return Math.max(1, from - worked);
    }

    private static Optional<Promise> promise(JobActivities job) {
        ProjectFacts.Promise promise = job.project().promise();
        if (promise == null) {
            return Optional.empty();
        }
        List<String> ids = job.items().stream()
                .filter(item -> promise.milestone().codes().contains(item.row().code()))
                .map(item -> item.row().id().toString())
                .toList();
        return ids.isEmpty()
                ? Optional.empty()
                : Optional.of(new Promise(
                        job.project().id().toString(),
                        promise.milestone().words(),
                        ids,
                        promise.lastDay(),
                        job.project().weight()));
    }

    private WeatherAllowance weather() {
        Map<Month, Double> lost = new EnumMap<>(Month.class);
        for (Month month : Month.values()) {
            double share = settings.weather()
                    .lostShareOutdoors(month, settings.branch().workingWeekdays());
            if (share > 0) {
                lost.put(month, share);
            }
        }
        return new WeatherAllowance(lost);
    }
}
