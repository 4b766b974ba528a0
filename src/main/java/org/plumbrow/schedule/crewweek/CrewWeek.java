package org.plumbrow.schedule.crewweek;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.plumbrow.branch.BranchFacts;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.duration.ActivityCode;
import org.plumbrow.crew.CrewFacts;
import org.plumbrow.crew.Crews;
import org.plumbrow.crew.EquipmentFacts;
import org.plumbrow.notice.OwnAddress;
import org.plumbrow.project.ProjectContact;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.schedule.CrewBooking;
import org.plumbrow.schedule.PublishedPlan;
import org.plumbrow.schedule.crewweek.WeekView.Day;
import org.plumbrow.schedule.crewweek.WeekView.Visit;
import org.plumbrow.web.QrCode;
import org.plumbrow.web.Words;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads a crew's week as it is published: each day where, with what, to do what, and whom to call there. */
@Service
@Transactional(readOnly = true)
class CrewWeek {

    private final CrewDoor door;
    private final BranchSettings settings;
    private final Crews crews;
    private final PublishedPlan plan;
    private final Projects projects;
    private final ReportRows reports;
    private final OwnAddress own;
    private final Words words;

    CrewWeek(
            CrewDoor door,
            BranchSettings settings,
            Crews crews,
            PublishedPlan plan,
            Projects projects,
            ReportRows reports,
            OwnAddress own,
            Words words) {
        this.door = door;
        this.settings = settings;
        this.crews = crews;
        this.plan = plan;
        this.projects = projects;
        this.reports = reports;
        this.own = own;
        this.words = words;
    }

    /** @param anyDay of the week; this week if empty */
    WeekView of(UUID crewId, Optional<LocalDate> anyDay) {
        CrewFacts crew = door.open(crewId);
        BranchFacts branch = settings.facts(crew.branchId());
        LocalDate today = words.today();
        LocalDate monday = anyDay.orElse(today).with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        List<CrewBooking> bookings =
                plan.ofCrew(crewId, HalfDay.morning(monday), HalfDay.afternoon(monday.plusDays(6)));
        Map<UUID, ProjectFacts> facts =
                projects
                        .factsUnchecked(bookings.stream()
                                .map(CrewBooking::projectId)
                                .distinct()
                                .toList())
                        .stream()
                        .collect(Collectors.toMap(ProjectFacts::id, Function.identity()));
        Map<UUID, List<String>> machines = machines(crew.branchId(), bookings, monday);
        List<WorkDay> work = WorkDay.of(bookings, branch, crew);
        Around around = new Around(
                crewId, today, facts, machines, Set.copyOf(reports.reported(crewId, monday, monday.plusDays(6))));
        List<Day> days = new ArrayList<>();
        for (LocalDate date = monday; date.isBefore(monday.plusDays(7)); date = date.plusDays(1)) {
            List<Visit> visits = visits(date, work, around);
            if (branch.workingWeekdays().holds(date.getDayOfWeek())
                    || branch.workDays().isWorking(date)
                    || !visits.isEmpty()) {
                days.add(new Day(date, date.equals(today), visits, off(date, branch, crew)));
            }
        }
        return new WeekView(crew, monday, days, plan.publishedAt(crew.branchId()), places(days));
    }

    private Map<UUID, List<String>> machines(UUID branchId, List<CrewBooking> bookings, LocalDate since) {
        Map<UUID, List<UUID>> at =
                plan.machinesAt(bookings.stream().map(CrewBooking::activityId).toList());
        if (at.isEmpty()) {
            return Map.of();
        }
        Map<UUID, String> names = crews.equipment(branchId, since).stream()
                .collect(Collectors.toMap(EquipmentFacts::id, EquipmentFacts::name));
        return at.entrySet().stream()
                .collect(Collectors.toMap(
                        Map.Entry::getKey,
                        entry -> entry.getValue().stream()
                                .map(id -> names.getOrDefault(id, "a machine"))
                                .sorted()
                                .toList()));
    }

    /** What is known about the week. @param machines by activity @param reported days with a report */
    private record Around(
            UUID crewId,
            LocalDate today,
            Map<UUID, ProjectFacts> facts,
            Map<UUID, List<String>> machines,
            Set<ReportRows.Day> reported) {}

    private List<Visit> visits(LocalDate date, List<WorkDay> work, Around around) {
        return work.stream()
                .filter(day -> day.date().equals(date))
                .sorted(Comparator.comparing(WorkDay::from))
                .map(day -> visit(day, around))
                .toList();
    }

    private Visit visit(WorkDay day, Around around) {
        CrewBooking booking = day.booking();
        ProjectFacts project = around.facts.get(booking.projectId());
        return new Visit(
                day.when(),
                booking.words(),
                "/projects/" + booking.projectId() + "/schedule/" + booking.key(),
                field(day, around),
                project,
                around.machines.getOrDefault(booking.activityId(), List.of()),
                projects.contactsUnchecked(project.id()).stream().findFirst().map(CrewWeek::call));
    }

    private WeekView.Field field(WorkDay day, Around around) {
        UUID projectId = day.booking().projectId();
        return new WeekView.Field(
                day.date().isAfter(around.today)
                        ? Optional.empty()
                        : Optional.of("/crews/%s/reports/%s/%s".formatted(around.crewId, projectId, day.date())),
                around.reported.contains(new ReportRows.Day(projectId, day.date())),
                day.booking().code() == ActivityCode.CUTOVER
                        ? Optional.of(dayLog("/projects/" + projectId + "/day-log"))
                        : Optional.empty());
    }

    private WeekView.DayLog dayLog(String href) {
        String whole = own.of(href);
        return new WeekView.DayLog(href, whole, QrCode.of(whole));
    }

    private static String call(ProjectContact contact) {
        return contact.phone().isBlank() ? contact.name() : contact.name() + ", " + contact.phone();
    }

    private static Optional<String> off(LocalDate date, BranchFacts branch, CrewFacts crew) {
        return branch.workDays().whyClosed(date).or(() -> crew.awayOn(date).map(away -> "Away: " + away.words()));
    }

    private static List<String> places(List<Day> days) {
        return days.stream()
                .flatMap(day -> day.visits().stream())
                .map(visit -> visit.project().name())
                .distinct()
                .toList();
    }
}
