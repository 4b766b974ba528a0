package org.plumbrow.schedule.crewweek;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.crew.Crews;
import org.plumbrow.project.CrewLeadReach;
import org.plumbrow.schedule.HalfDayNumber;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/**
 * Which projects a crew lead may open: those on which a crew of theirs is booked, or has done something, from eight weeks
 * back to eight weeks ahead.
 */
@Component
@Transactional(readOnly = true)
class BookedProjects implements CrewLeadReach {

    private static final int WEEKS = 8;
    private static final String REACHED = """
            select project_id from crew_booking
             where branch_id = :branch and crew_id in (:crews) and half_days && int8range(:from, :to, '[]')
            union
            select project_id from activity
             where branch_id = :branch and done_by_crew_id in (:crews)
               and started_on <= :last and coalesce(finished_on, :last) >= :first
            """;

    private final Crews crews;
    private final JdbcClient jdbc;
    private final Clock clock;

    BookedProjects(Crews crews, JdbcClient jdbc, Clock clock) {
        this.crews = crews;
        this.jdbc = jdbc;
        this.clock = clock;
    }

    @Override
    public boolean reaches(UUID personId, UUID projectId) {
        return jdbc.sql("select branch_id from activity where project_id = ? limit 1")
                .param(projectId)
                .query(UUID.class)
                .optional()
                .filter(branch -> within(personId, branch).contains(projectId))
                .isPresent();
    }

    @Override
    public Set<UUID> within(UUID personId, UUID branchId) {
        List<UUID> own = crews.crewsLedBy(branchId, personId);
        if (own.isEmpty()) {
            return Set.of();
        }
        LocalDate today = LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC);
        LocalDate first = today.minusWeeks(WEEKS);
        LocalDate last = today.plusWeeks(WEEKS);
        return new HashSet<>(jdbc.sql(REACHED)
                .param("branch", branchId)
                .param("crews", own)
                .param("first", first)
                .param("last", last)
                .param("from", (long) HalfDayNumber.of(HalfDay.morning(first)))
                .param("to", (long) HalfDayNumber.of(HalfDay.afternoon(last)))
                .query(UUID.class)
                .list());
    }
}
