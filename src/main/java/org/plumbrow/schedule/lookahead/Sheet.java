package org.plumbrow.schedule.lookahead;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.plumbrow.branch.BranchFacts;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.duration.Skill;
import org.plumbrow.calc.planning.Absence;
import org.plumbrow.calc.planning.Bound;
import org.plumbrow.calc.planning.Clash;
import org.plumbrow.calc.planning.Crew;
import org.plumbrow.calc.planning.IdleGap;
import org.plumbrow.calc.planning.LookAhead;
import org.plumbrow.calc.planning.Placement;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.WeatherAllowance;
import org.plumbrow.crew.CrewFacts;
import org.plumbrow.crew.CrewsOfBranch;
import org.plumbrow.schedule.CrewBooking;
import org.plumbrow.schedule.forecast.MilestoneForecast;
import org.plumbrow.schedule.plan.PlannedRow;
import org.plumbrow.schedule.plan.StoredPlan;

/**
 * Everything the look-ahead is made from, read once.
 *
 * @param forecasts of the promised milestone of each project that has one
 * @param past what was booked before the plan's first day, within the weeks shown
 */
record Sheet(
        BranchFacts branch,
        DayColumns columns,
        StoredPlan plan,
        CrewsOfBranch people,
        Map<UUID, ProjectLabel> projects,
        Map<UUID, MilestoneForecast> forecasts,
        List<CrewBooking> past) {

    /** The core's own look at idle times and double bookings, from the plan's first day on. */
    private LookAhead lookAhead(LocalDate first, LocalDate last) {
        PlanningProblem crewsOnly = new PlanningProblem(
                branch.workDays(),
                HalfDay.morning(first),
                last.plusDays(1),
                List.of(),
                List.of(),
                crews().stream().map(this::core).toList(),
                List.of(),
                List.of(),
                WeatherAllowance.NONE);
        return new LookAhead(crewsOnly, placements(), first, last);
    }

    private Plan placements() {
        Map<String, Placement> placements = new LinkedHashMap<>();
        for (PlannedRow row : plan.rows()) {
            row.crewId()
                    .ifPresent(crew -> placements.put(
                            row.activityId().toString(),
                            new Placement(
                                    row.activityId().toString(),
                                    row.start(),
                                    row.finish(),
                                    Optional.of(crew.toString()),
                                    new Bound.Today())));
        }
        return new Plan(placements, List.of(), List.of());
    }

    private Crew core(CrewFacts crew) {
        List<Absence> absences = new ArrayList<>();
        crew.away().forEach(time -> absences.add(new Absence(time.first(), time.last(), time.words())));
        if (crew.from().isAfter(columns.first())) {
            absences.add(new Absence(
                    HalfDay.morning(columns.first()),
                    HalfDay.afternoon(crew.from().minusDays(1)),
                    "not yet there"));
        }
        crew.until()
                .filter(last -> last.isBefore(columns.last()))
                .ifPresent(last -> absences.add(new Absence(
                        HalfDay.morning(last.plusDays(1)),
                        HalfDay.afternoon(columns.last().plusDays(1)),
                        "ended")));
        return new Crew(
                crew.id().toString(),
                crew.name(),
                crew.skills().stream().map(Skill::name).collect(Collectors.toSet()),
                absences);
    }

    /** Crews that are there on some day shown, by name. */
    List<CrewFacts> crews() {
        return people.crews().stream()
                .filter(crew -> !crew.from().isAfter(columns.last())
                        && crew.until()
                                .filter(last -> last.isBefore(columns.first()))
                                .isEmpty())
                .toList();
    }

    String crewName(String id) {
        return people.crews().stream()
                .filter(crew -> crew.id().toString().equals(id))
                .map(CrewFacts::name)
                .findFirst()
                .orElse("A crew");
    }

    String projectName(UUID id) {
        return Optional.ofNullable(projects.get(id)).map(ProjectLabel::name).orElse("A project");
    }

    Map<UUID, List<PlannedRow>> rowsByProject() {
        return plan.rows().stream().collect(Collectors.groupingBy(PlannedRow::projectId));
    }

    /** What each crew has, the past of the weeks shown included. */
    List<PlannedRow> bookedFor(UUID crewId) {
        List<PlannedRow> booked = new ArrayList<>();
        past.stream()
                .filter(booking -> booking.crewId().equals(crewId))
                .map(Sheet::asRow)
                .forEach(booked::add);
        plan.rows().stream()
                .filter(row -> row.crewId().filter(crewId::equals).isPresent())
                .forEach(booked::add);
        return booked;
    }

    private static PlannedRow asRow(CrewBooking booking) {
        return new PlannedRow(
                booking.activityId(),
                booking.projectId(),
                booking.key(),
                booking.code(),
                booking.words(),
                0,
                "",
                false,
                false,
                booking.first(),
                booking.last(),
                Optional.of(booking.crewId()),
                "",
                Optional.empty(),
                "");
    }

    /** Half-days that a stretch has within each week shown, holidays left out. */
    int[] byWeek(HalfDay first, HalfDay last) {
        int[] weeks = new int[columns.span().weeks()];
        int perWeek = 2 * columns.daysAWeek();
        for (int place = columns.at(first); place < columns.behind(last); place++) {
            if (columns.days().get(place / 2).closed().isEmpty()) {
                weeks[place / perWeek]++;
            }
        }
        return weeks;
    }

    record Looked(List<IdleGap> idle, List<Clash> clashes) {}

    /** Idle times within the weeks shown; double bookings however far ahead they lie. */
    Looked looked() {
        LocalDate begin = plan.head().first().date();
        LocalDate first = begin.isAfter(columns.first()) ? begin : columns.first();
        LocalDate last = first.isAfter(columns.last()) ? first : columns.last();
        LocalDate end = plan.rows().stream()
                .map(row -> row.finish().date())
                .max(LocalDate::compareTo)
                .filter(day -> day.isAfter(begin))
                .orElse(begin);
        return new Looked(lookAhead(first, last).idle(), lookAhead(begin, end).clashes());
    }

    /** Names of the crews with a double booking. */
    List<String> bookedTwice(Looked looked) {
        return looked.clashes().stream()
                .map(clash -> crewName(clash.crewId()))
                .distinct()
                .toList();
    }
}
