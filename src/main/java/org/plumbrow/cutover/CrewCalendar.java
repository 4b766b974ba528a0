package org.plumbrow.cutover;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.duration.Skill;
import org.plumbrow.calc.outage.CrewOffer;
import org.plumbrow.calc.outage.CrewOffer.Busy;
import org.plumbrow.crew.CrewFacts;
import org.plumbrow.crew.Crews;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.schedule.CrewBooking;
import org.plumbrow.schedule.PublishedPlan;
import org.plumbrow.web.NaturalOrder;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Which crews could do a cutover, and when each is elsewhere: away, booked in the published plan, at another cutover. */
@Component
class CrewCalendar {

    private final Crews crews;
    private final PublishedPlan plan;
    private final Projects projects;
    private final JdbcClient jdbc;

    CrewCalendar(Crews crews, PublishedPlan plan, Projects projects, JdbcClient jdbc) {
        this.crews = crews;
        this.plan = plan;
        this.projects = projects;
        this.jdbc = jdbc;
    }

    /** Crews with a licensed electrician, by name. What is booked for this very project does not count as elsewhere. */
    List<CrewOffer> offers(UUID branchId, UUID projectId, LocalDate from, LocalDate to) {
        List<Elsewhere> elsewhere = new ArrayList<>(cutovers(branchId, projectId, from));
        elsewhere.addAll(booked(branchId, projectId, from, to));
        return crews.crews(branchId, from).stream()
                .filter(crew -> crew.skills().contains(Skill.ELECTRICIAN))
                .filter(crew -> crew.until().map(last -> !last.isBefore(from)).orElse(true))
                .sorted(Comparator.comparing(CrewFacts::name, NaturalOrder.OF_NAMES))
                .map(crew -> new CrewOffer(crew.id().toString(), crew.name(), busy(crew, to, elsewhere)))
                .toList();
    }

    private List<Elsewhere> booked(UUID branchId, UUID projectId, LocalDate from, LocalDate to) {
        List<CrewBooking> bookings = plan.bookings(branchId, HalfDay.morning(from), HalfDay.afternoon(to)).stream()
                .filter(booking -> !booking.projectId().equals(projectId))
                .toList();
        Set<UUID> ids = bookings.stream().map(CrewBooking::projectId).collect(Collectors.toSet());
        Map<UUID, String> names =
                projects.factsUnchecked(ids).stream().collect(Collectors.toMap(ProjectFacts::id, ProjectFacts::name));
        return bookings.stream()
                .map(booking -> new Elsewhere(
                        booking.crewId(),
                        booking.first(),
                        booking.last(),
                        names.getOrDefault(booking.projectId(), "another job") + ", " + booking.words()))
                .toList();
    }

    private static List<Busy> busy(CrewFacts crew, LocalDate to, List<Elsewhere> elsewhere) {
        List<Busy> busy = new ArrayList<>();
        crew.away().forEach(away -> busy.add(new Busy(away.first(), away.last(), away.words())));
        crew.until()
                .filter(last -> last.isBefore(to))
                .ifPresent(last -> busy.add(new Busy(
                        HalfDay.morning(last.plusDays(1)), HalfDay.afternoon(to), "the crew no longer works")));
        elsewhere.stream()
                .filter(one -> one.crewId.equals(crew.id()))
                .forEach(one -> busy.add(new Busy(one.first, one.last, one.what)));
        return busy;
    }

    private record Elsewhere(UUID crewId, HalfDay first, HalfDay last, String what) {}

    private List<Elsewhere> cutovers(UUID branchId, UUID projectId, LocalDate from) {
        return jdbc.sql("""
                select w.crew_id, w.day, w.start_time, w.outage_minutes, p.name
                  from outage_window w join project p on p.id = w.project_id
                 where w.branch_id = :branch and w.project_id <> :project and w.day >= :from and w.crew_id is not null
                   and w.state in ('PROPOSED', 'BOOKED', 'NOTICE_GIVEN')
                """)
                .param("branch", branchId)
                .param("project", projectId)
                .param("from", from)
                .query((row, n) -> {
                    LocalDate day = row.getObject("day", LocalDate.class);
                    LocalTime start = row.getObject("start_time", LocalTime.class);
                    LocalTime end = start.plusMinutes(row.getInt("outage_minutes"));
                    return new Elsewhere(
                            row.getObject("crew_id", UUID.class),
                            start.isBefore(LocalTime.NOON) ? HalfDay.morning(day) : HalfDay.afternoon(day),
                            end.isAfter(LocalTime.NOON) ? HalfDay.afternoon(day) : HalfDay.morning(day),
                            "cutover at " + row.getString("name"));
                })
                .list();
    }
}
