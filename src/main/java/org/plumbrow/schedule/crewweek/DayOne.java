package org.plumbrow.schedule.crewweek;

import java.sql.Timestamp;
import java.time.Clock;
import java.time.Instant;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.project.Journal;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.web.Access;
import org.plumbrow.web.May;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Day one of a crew at a site: ticked by name and hour. Of two who tick, the first one's tick stands. */
@Service
class DayOne {

    private final ProjectAccess projectAccess;
    private final Access access;
    private final Journal journal;
    private final JdbcClient jdbc;
    private final Clock clock;

    DayOne(ProjectAccess projectAccess, Access access, Journal journal, JdbcClient jdbc, Clock clock) {
        this.projectAccess = projectAccess;
        this.access = access;
        this.journal = journal;
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** @param tick who and when; empty while it is open */
    record Ticked(DayOneStep step, Optional<Tick> tick) {}

    record Tick(String by, Instant at) {}

    @Transactional(readOnly = true)
    List<Ticked> of(UUID projectId) {
        projectAccess.require(projectId, May.RECORD_PROGRESS);
        Map<DayOneStep, Tick> ticks = new EnumMap<>(DayOneStep.class);
        jdbc.sql("select step, by_name, at from day_one_step where project_id = ?")
                .param(projectId)
                .query(row -> {
                    ticks.put(
                            DayOneStep.valueOf(row.getString("step")),
                            new Tick(
                                    row.getString("by_name"),
                                    row.getTimestamp("at").toInstant()));
                });
        return Arrays.stream(DayOneStep.values())
                .map(step -> new Ticked(step, Optional.ofNullable(ticks.get(step))))
                .toList();
    }

    @Transactional
    void tick(UUID projectId, DayOneStep step) {
        UUID branchId = projectAccess.require(projectId, May.RECORD_PROGRESS);
        Instant now = clock.instant();
        int ticked = jdbc.sql("""
                insert into day_one_step (project_id, step, branch_id, at, by_name) values (?, ?, ?, ?, ?)
                on conflict do nothing
                """)
                .params(
                        projectId,
                        step.name(),
                        branchId,
                        Timestamp.from(now),
                        access.actor().name())
                .update();
        if (ticked == 1) {
            say(projectId, "dayone.ticked", step.words() + ".", now);
        }
    }

    @Transactional
    void takeBack(UUID projectId, DayOneStep step) {
        projectAccess.require(projectId, May.RECORD_PROGRESS);
        int taken = jdbc.sql("delete from day_one_step where project_id = ? and step = ?")
                .params(projectId, step.name())
                .update();
        if (taken == 1) {
            say(projectId, "dayone.takenback", step.words() + ": taken back, not done yet.", clock.instant());
        }
    }

    private void say(UUID projectId, String kind, String sentence, Instant now) {
        journal.append(JournalEvent.of(projectId, kind, "Day one: " + sentence), access.actor(), now);
    }
}
