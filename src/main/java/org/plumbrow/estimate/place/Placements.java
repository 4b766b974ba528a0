package org.plumbrow.estimate.place;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.estimate.place.Placement.Choice;
import org.plumbrow.project.Journal;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.plumbrow.web.Refusal;
import org.plumbrow.web.Words;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Roof or ground: what was decided for each project. */
@Service
@Transactional
public class Placements {

    private final JdbcClient jdbc;
    private final ProjectAccess projectAccess;
    private final Access access;
    private final Journal journal;
    private final Words words;
    private final Clock clock;

    Placements(JdbcClient jdbc, ProjectAccess projectAccess, Access access, Journal journal, Words words, Clock clock) {
        this.jdbc = jdbc;
        this.projectAccess = projectAccess;
        this.access = access;
        this.journal = journal;
        this.words = words;
        this.clock = clock;
    }

    /** Nobody is asked for: whoever reads it has been let into the project. */
    @Transactional(readOnly = true)
    Placement ofUnchecked(UUID projectId) {
        return jdbc.sql("""
                select version, choice, decided_by, decided_with, decided_on, reason from placement where project_id = ?
                """)
                .param(projectId)
                .query(Placements::placement)
                .optional()
                .orElse(Placement.NOTHING);
    }

    private static Placement placement(ResultSet row, int number) throws SQLException {
        return new Placement(
                row.getLong("version"),
                Choice.valueOf(row.getString("choice")),
                row.getString("decided_by"),
                row.getString("decided_with"),
                row.getObject("decided_on", LocalDate.class),
                row.getString("reason"));
    }

    /**
     * @param to with the version that was opened, -1 where nothing was written
     * @return what is wrong with it
     * @throws EditedMeanwhile if somebody was faster
     */
    public Optional<Refusal> decide(UUID projectId, Placement to) {
        UUID branchId = projectAccess.require(projectId, May.EDIT_PROJECT);
        Optional<Refusal> refusal = refusal(to);
        if (refusal.isPresent()) {
            return refusal;
        }
        Placement before = ofUnchecked(projectId);
        EditedMeanwhile.check(to.version(), before.version());
        if (before.equals(to)) {
            return Optional.empty();
        }
        if (!write(projectId, branchId, to)) {
            throw new EditedMeanwhile(to.version(), before.version());
        }
        journal.append(event(projectId, before, to), access.actor(), clock.instant());
        return Optional.empty();
    }

    private Optional<Refusal> refusal(Placement to) {
        LocalDate on = to.decidedOn();
        if (on != null && on.isAfter(words.today())) {
            return Optional.of(
                    new Refusal("decidedOn", "Write a day up to today: what is still to come is not decided."));
        }
        if (!to.isDecided()) {
            return Optional.empty();
        }
        if (to.decidedBy().isEmpty()) {
            return Optional.of(new Refusal("decidedBy", "Write who of the firm decided."));
        }
        if (to.decidedWith().isEmpty()) {
            return Optional.of(new Refusal("decidedWith", "Write with whom at the customer’s side it was decided."));
        }
        return on == null
                ? Optional.of(new Refusal("decidedOn", "Write the day on which it was decided."))
                : Optional.empty();
    }

    private boolean write(UUID projectId, UUID branchId, Placement to) {
        return jdbc.sql("""
                insert into placement as p (project_id, branch_id, choice, decided_by, decided_with, decided_on, reason)
                select :project, :branch, :choice, :by, :with, cast(:on as date), :reason
                 where :version = -1 or exists (select 1 from placement where project_id = :project)
                on conflict (project_id) do update
                   set choice = excluded.choice, decided_by = excluded.decided_by, decided_with = excluded.decided_with,
                       decided_on = excluded.decided_on, reason = excluded.reason, version = p.version + 1
                 where p.version = :version
                """)
                        .param("project", projectId)
                        .param("branch", branchId)
                        .param("choice", to.choice().name())
                        .param("by", to.decidedBy())
                        .param("with", to.decidedWith())
                        .param("on", to.decidedOn(), java.sql.Types.DATE)
                        .param("reason", to.reason())
                        .param("version", to.version())
                        .update()
                == 1;
    }

    /** Without the customer's name. */
    private static JournalEvent event(UUID projectId, Placement before, Placement to) {
        String sentence = to.isDecided()
                ? "Decided with the customer: the array goes on %s. Reason: %s"
                        .formatted(to.choice().words(), to.reason())
                : "Roof or ground is not decided yet. Open: " + to.reason();
        return JournalEvent.of(
                projectId,
                "placement.decided",
                sentence,
                Map.of(
                        "choice.from",
                        before.choice().name(),
                        "choice.to",
                        to.choice().name()));
    }
}
