package org.plumbrow.cutover;

import java.sql.Timestamp;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.database.ReadOnce;
import org.plumbrow.design.draft.Designs;
import org.plumbrow.survey.Surveys;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** From which revision of the design the steps of a day were made, and which one is in force. Callers have asked who may. */
@Component
public class StepsOfDay {

    private final Designs designs;
    private final Surveys surveys;
    private final JdbcClient jdbc;

    StepsOfDay(Designs designs, Surveys surveys, JdbcClient jdbc) {
        this.designs = designs;
        this.surveys = surveys;
        this.jdbc = jdbc;
    }

    /** @param revision letter of the revision that they were made from */
    public record Made(String revision, String by, Instant at) {}

    private record InForce(UUID projectId) {}

    /** By the newest frozen revision; empty while none is frozen. */
    public Optional<CutoverWay> inForce(UUID projectId) {
        return ReadOnce.of(
                new InForce(projectId),
                () -> designs.newestFrozenUnchecked(projectId)
                        .map(design -> CutoverWay.of(design, surveys.factsUnchecked(projectId))));
    }

    public Optional<Made> made(UUID windowId) {
        return jdbc.sql("select revision, made_by, made_at from outage_steps where window_id = ?")
                .param(windowId)
                .query((row, n) -> new Made(
                        row.getString("revision"),
                        row.getString("made_by"),
                        row.getTimestamp("made_at").toInstant()))
                .optional();
    }

    public void make(OutageFacts window, CutoverWay way, String by, Instant at) {
        jdbc.sql("""
                insert into outage_steps (window_id, branch_id, revision, made_by, made_at) values (?, ?, ?, ?, ?)
                on conflict (window_id) do update
                   set revision = excluded.revision, made_by = excluded.made_by, made_at = excluded.made_at
                """)
                .params(window.id(), window.branchId(), way.revision(), by, Timestamp.from(at))
                .update();
    }
}
