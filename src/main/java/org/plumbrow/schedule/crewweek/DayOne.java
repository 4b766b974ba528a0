package org.plumbrow.schedule.crewweek;

import java.sql.Timestamp;
import java.sql.Types;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.project.Journal;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.WrittenDown;
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

    record Tick(String by, WrittenDown when) {

        /** Says which tick it is: it can be made anew after it was taken back. */
        public long version() {
            return when.at().toEpochMilli();
        }
    }

    @Transactional(readOnly = true)
    List<Ticked> of(UUID projectId) {
        projectAccess.require(projectId, May.RECORD_PROGRESS);
        Map<DayOneStep, Tick> ticks = new EnumMap<>(DayOneStep.class);
        jdbc.sql("select step, by_name, at, received_at, phone_at from day_one_step where project_id = ?")
                .param(projectId)
                .query(row -> {
                    ticks.put(
                            DayOneStep.valueOf(row.getString("step")),
                            new Tick(row.getString("by_name"), ReportRows.writtenDown(row, "at")));
                });
        return Arrays.stream(DayOneStep.values())
                .map(step -> new Ticked(step, Optional.ofNullable(ticks.get(step))))
                .toList();
    }

    /** Ticked now, on the page. */
    @Transactional
    Answer tick(UUID projectId, DayOneStep step) {
        return tick(projectId, step, WrittenDown.now(clock.instant()));
    }

    /** @return whether it was made, and the tick that stands now */
    record Answer(boolean made, Optional<Tick> stands) {}

    @Transactional
    Answer tick(UUID projectId, DayOneStep step, WrittenDown when) {
        UUID branchId = projectAccess.require(projectId, May.RECORD_PROGRESS);
        int ticked = jdbc.sql("""
                insert into day_one_step (project_id, step, branch_id, at, by_name, received_at, phone_at)
                values (:project, :step, :branch, :at, :by, :received, :phone) on conflict do nothing
                """)
                .param("project", projectId)
                .param("step", step.name())
                .param("branch", branchId)
                .param("at", Timestamp.from(when.at().truncatedTo(ChronoUnit.MILLIS)))
                .param("by", access.actor().name())
                .param("received", Timestamp.from(when.received()))
                .param("phone", ReportRows.phone(when), Types.TIMESTAMP)
                .update();
        if (ticked == 1) {
            say(projectId, "dayone.ticked", step.words() + ".", when.received());
        }
        return new Answer(ticked == 1, stands(projectId, step));
    }

    /** @param seen the tick that the page showed: another's tick, made since, stays */
    @Transactional
    Answer takeBack(UUID projectId, DayOneStep step, long seen) {
        projectAccess.require(projectId, May.RECORD_PROGRESS);
        int taken = stands(projectId, step)
                .filter(tick -> tick.version() == seen)
                .map(tick -> delete(projectId, step, tick.when().at()))
                .orElse(0);
        if (taken == 1) {
            say(projectId, "dayone.takenback", step.words() + ": taken back, not done yet.", clock.instant());
        }
        return new Answer(taken == 1, stands(projectId, step));
    }

    private int delete(UUID projectId, DayOneStep step, Instant at) {
        return jdbc.sql("delete from day_one_step where project_id = ? and step = ? and at = ?")
                .params(projectId, step.name(), Timestamp.from(at))
                .update();
    }

    private Optional<Tick> stands(UUID projectId, DayOneStep step) {
        return of(projectId).stream()
                .filter(one -> one.step() == step)
                .findFirst()
                .flatMap(Ticked::tick);
    }

    private void say(UUID projectId, String kind, String sentence, Instant now) {
        journal.append(JournalEvent.of(projectId, kind, "Day one: " + sentence), access.actor(), now);
    }
}
