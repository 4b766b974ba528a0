package org.plumbrow.project.intake;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.web.Actor;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/** The files that were brought, with the choices made for them. */
@Component
class IntakeRows {

    private final JdbcClient jdbc;
    private final JsonMapper json;

    IntakeRows(JdbcClient jdbc, JsonMapper json) {
        this.jdbc = jdbc;
        this.json = json;
    }

    enum State {
        LOOKED_AT,
        WAITS,
        TAKEN_IN
    }

    /** A file without its bytes. The counts are null until it is taken in. */
    record Brought(
            UUID id,
            UUID branchId,
            long version,
            String fileName,
            IntakeChoices choices,
            State state,
            @Nullable Integer opened,
            @Nullable Integer wereHere,
            @Nullable Integer leftOut,
            Instant at,
            String byName) {}

    void insert(UUID id, UUID branchId, String fileName, byte[] bytes, IntakeChoices choices, Actor by, Instant at) {
        jdbc.sql("""
                insert into project_intake (id, branch_id, file_name, bytes, choices, state, at, by_person_id, by_name)
                values (?, ?, ?, ?, ?, 'LOOKED_AT', ?, ?, ?)
                """)
                .params(
                        id,
                        branchId,
                        fileName,
                        bytes,
                        json.writeValueAsString(choices),
                        utc(at),
                        by.personId(),
                        by.name())
                .update();
    }

    Optional<Brought> find(UUID id) {
        return jdbc.sql(
                        "select id, branch_id, version, file_name, choices, state, opened, were_here, left_out, at, by_name"
                                + " from project_intake where id = ?")
                .param(id)
                .query(this::brought)
                .optional();
    }

    List<Brought> latest(UUID branchId) {
        return jdbc.sql(
                        "select id, branch_id, version, file_name, choices, state, opened, were_here, left_out, at, by_name"
                                + " from project_intake where branch_id = ? order by at desc limit 20")
                .param(branchId)
                .query(this::brought)
                .list();
    }

    byte[] bytes(UUID id) {
        return jdbc.sql("select bytes from project_intake where id = ?")
                .param(id)
                .query(byte[].class)
                .single();
    }

    /** @return false if somebody saved other choices meanwhile, or the file is no longer only looked at */
    boolean choose(UUID id, long openedVersion, IntakeChoices choices) {
        return jdbc.sql("update project_intake set choices = ?, version = version + 1"
                                + " where id = ? and version = ? and state = 'LOOKED_AT'")
                        .params(json.writeValueAsString(choices), id, openedVersion)
                        .update()
                == 1;
    }

    /** @return false if it waits or is taken in already */
    boolean letWait(UUID id) {
        return jdbc.sql(
                                "update project_intake set state = 'WAITS', version = version + 1 where id = ? and state = 'LOOKED_AT'")
                        .param(id)
                        .update()
                == 1;
    }

    void takenIn(UUID id, int opened, int wereHere, int leftOut, Instant at) {
        jdbc.sql("update project_intake set state = 'TAKEN_IN', opened = ?, were_here = ?, left_out = ?, taken_at = ?,"
                        + " version = version + 1 where id = ?")
                .params(opened, wereHere, leftOut, utc(at), id)
                .update();
    }

    private Brought brought(ResultSet row, int number) throws SQLException {
        return new Brought(
                row.getObject("id", UUID.class),
                row.getObject("branch_id", UUID.class),
                row.getLong("version"),
                row.getString("file_name"),
                json.readValue(row.getString("choices"), IntakeChoices.class),
                State.valueOf(row.getString("state")),
                row.getObject("opened", Integer.class),
                row.getObject("were_here", Integer.class),
                row.getObject("left_out", Integer.class),
                row.getObject("at", OffsetDateTime.class).toInstant(),
                row.getString("by_name"));
    }

    private static OffsetDateTime utc(Instant at) {
        return OffsetDateTime.ofInstant(at, ZoneOffset.UTC);
    }
}
