package org.plumbrow.project;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * What later rooms tell the list of projects, in the transaction in which they know it: the planned day, who acts next,
 * what is missing, which crews come. The list computes nothing itself.
 */
@Service
@Transactional(propagation = Propagation.MANDATORY)
public class ProjectOutlook {

    private final JdbcClient jdbc;
    private final Journal journal;

    ProjectOutlook(JdbcClient jdbc, Journal journal) {
        this.jdbc = jdbc;
        this.journal = journal;
    }

    /**
     * The day on which the published plan has the promised milestone; null while there is none. Late is a plan behind
     * the promise and its tolerance.
     */
    public void planned(UUID projectId, @Nullable LocalDate on) {
        journal.inTurn(projectId);
        jdbc.sql("""
                update project_line
                   set planned_on = cast(:day as date),
                       late = coalesce(cast(:day as date) > promised_on + tolerance_days, false)
                 where project_id = :project
                """).param("day", on).param("project", projectId).update();
    }

    /**
     * How the next gate stands; all null behind the last one.
     *
     * @param missing how many of its items are missing, of how many
     * @param who "Rosa, permits"; null when nobody has to act
     * @param what what they do, a sentence without the name: "Renew the locate ticket."
     * @param by until when; null without a date
     */
    public record AtTheGate(
            @Nullable Integer missing,
            @Nullable Integer of,
            @Nullable String who,
            @Nullable String what,
            @Nullable LocalDate by) {

        public static final AtTheGate NOTHING = new AtTheGate(null, null, null, null, null);
    }

    /** For whoever has read in turn ({@link Journal#inTurn}) how it stands. */
    public void nextGate(UUID projectId, AtTheGate gate) {
        jdbc.sql("""
                update project_line
                   set missing = cast(:missing as int), missing_of = cast(:of as int), acts_next = cast(:who as text),
                       acts_what = cast(:what as text), acts_by = cast(:day as date)
                 where project_id = :project
                """)
                .param("missing", gate.missing)
                .param("of", gate.of)
                .param("who", gate.who)
                .param("what", gate.what)
                .param("day", gate.by)
                .param("project", projectId)
                .update();
    }

    /** A crew that is booked on a project. */
    public record BookedCrew(UUID id, String name) {}

    /** All crews booked on the project from now on; replaces what was told before. */
    public void crews(UUID projectId, List<BookedCrew> crews) {
        journal.inTurn(projectId);
        jdbc.sql("delete from project_line_crew where project_id = ?")
                .param(projectId)
                .update();
        for (BookedCrew crew : crews) {
            jdbc.sql("""
                    insert into project_line_crew (project_id, branch_id, crew_id, name)
                    select project_id, branch_id, ?, ? from project_line where project_id = ?
                    """).params(crew.id(), crew.name(), projectId).update();
        }
        for (BookedCrew crew : crews) {
            jdbc.sql("""
                    insert into project_crew_told as told (branch_id, crew_id, name)
                    select branch_id, ?, ? from project_line where project_id = ?
                    on conflict (branch_id, crew_id) do update set name = excluded.name where told.name <> excluded.name
                    """).params(crew.id(), crew.name(), projectId).update();
        }
        jdbc.sql("update project_line set crew_names = ? where project_id = ?")
                .params(crews.stream().map(BookedCrew::name).sorted().collect(Collectors.joining(", ")), projectId)
                .update();
    }
}
