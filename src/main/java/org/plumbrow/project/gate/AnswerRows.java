package org.plumbrow.project.gate;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.database.Ids;
import org.plumbrow.project.Duty;
import org.plumbrow.project.Stage;
import org.plumbrow.web.Actor;
import org.plumbrow.web.EditedMeanwhile;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The rows of what was answered. Each act on an item counts its version up by one. */
@Repository
class AnswerRows {

    private final JdbcClient jdbc;

    AnswerRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * Waits until it is this transaction's turn at the project: whoever changes anything of a gate does so one after the
     * other, as the journal's lines do. What is read behind it is the newest.
     */
    void inTurn(UUID projectId) {
        jdbc.sql("select lines from project_journal_head where project_id = ? for update")
                .param(projectId)
                .query(Integer.class)
                .optional();
    }

    /** What was answered at the items of these gates, by item; two queries. */
    Map<String, AnswerRow> of(UUID projectId, List<Stage> stages) {
        List<String> beginnings = stages.stream().map(AnswerRows::beginning).toList();
        Map<UUID, List<AnswerPart>> parts = new HashMap<>();
        jdbc.sql("""
                select p.* from gate_answer_part p join gate_answer a on a.id = p.answer_id
                 where a.project_id = :project and split_part(a.item, '.', 1) in (:stages) and p.ended_version is null
                 order by p.at, p.id
                """).param("project", projectId).param("stages", beginnings).query(row -> {
            parts.computeIfAbsent(row.getObject("answer_id", UUID.class), id -> new ArrayList<>())
                    .add(part(row));
        });
        Map<String, AnswerRow> rows = new HashMap<>();
        jdbc.sql("select * from gate_answer where project_id = :project and split_part(item, '.', 1) in (:stages)")
                .param("project", projectId)
                .param("stages", beginnings)
                .query(AnswerRows::row)
                .list()
                .forEach(row -> rows.put(
                        String.valueOf(row.asked() == null ? null : row.asked().code()),
                        row.with(parts.getOrDefault(row.id(), List.of()))));
        return rows;
    }

    private static String beginning(Stage stage) {
        return stage.name().toLowerCase(Locale.ROOT);
    }

    private static AnswerRow row(ResultSet row, int number) throws SQLException {
        AskedItem asked = new AskedItem(
                row.getString("item"),
                row.getString("words"),
                "",
                AnswerKind.read(row.getString("kinds")),
                row.getString("unit"),
                row.getBigDecimal("low"),
                row.getBigDecimal("high"),
                row.getInt("least"),
                Condition.EVERYWHERE,
                row.getBoolean("required"),
                row.getBoolean("safety"),
                Duty.PROJECT_MANAGER);
        return new AnswerRow(
                row.getObject("id", UUID.class),
                row.getLong("version"),
                asked,
                AnswerRow.Stand.valueOf(row.getString("stand")),
                row.getString("reason"),
                row.getString("stand_by"),
                instant(row, "stand_at"),
                row.getString("waits_on"),
                row.getObject("promised_on", LocalDate.class),
                List.of());
    }

    private static AnswerPart part(ResultSet row) throws SQLException {
        return new AnswerPart(
                row.getObject("id", UUID.class),
                AnswerKind.valueOf(row.getString("kind")),
                row.getBigDecimal("number"),
                row.getString("text"),
                row.getString("label"),
                row.getObject("on_date", LocalDate.class),
                row.getObject("evidence_id", UUID.class),
                row.getString("note"),
                row.getObject("at", OffsetDateTime.class).toInstant(),
                row.getString("by_name"),
                row.getLong("since_version"));
    }

    private static @Nullable Instant instant(ResultSet row, String column) throws SQLException {
        OffsetDateTime at = row.getObject(column, OffsetDateTime.class);
        return at == null ? null : at.toInstant();
    }

    /**
     * Writes the row as it stands from now on, with its next version.
     *
     * @throws EditedMeanwhile if somebody was faster
     */
    void write(UUID branchId, UUID projectId, AskedItem asked, AnswerRow to) {
        long before = to.version() - 1;
        String sql = before == 0 ? """
                insert into gate_answer (id, version, branch_id, project_id, item, stand, words, kinds, unit, low, high, least,
                                         required, safety, reason, stand_by, stand_at, waits_on, promised_on)
                values (:id, :version, :branch, :project, :item, :stand, :words, :kinds, :unit, cast(:low as numeric),
                        cast(:high as numeric), :least, :required, :safety, cast(:reason as text), cast(:standBy as text),
                        cast(:standAt as timestamptz), cast(:waitsOn as text), cast(:promisedOn as date))
                on conflict (project_id, item) do nothing
                """ : """
                update gate_answer
                   set version = :version, stand = :stand, words = :words, kinds = :kinds, unit = :unit,
                       low = cast(:low as numeric), high = cast(:high as numeric), least = :least, required = :required,
                       safety = :safety, reason = cast(:reason as text), stand_by = cast(:standBy as text),
                       stand_at = cast(:standAt as timestamptz), waits_on = cast(:waitsOn as text),
                       promised_on = cast(:promisedOn as date)
                 where id = :id and version = :version - 1
                """;
        JdbcClient.StatementSpec statement = jdbc.sql(sql)
                .param("id", to.id())
                .param("version", to.version())
                .param("stand", to.stand().name())
                .param("words", asked.words())
                .param("kinds", AnswerKind.write(asked.kinds()))
                .param("unit", asked.unit())
                .param("low", asked.low())
                .param("high", asked.high())
                .param("least", asked.least())
                .param("required", asked.required())
                .param("safety", asked.safety())
                .param("reason", to.reason())
                .param("standBy", to.standBy())
                .param("standAt", to.standAt() == null ? null : utc(to.standAt()))
                .param("waitsOn", to.waitsOn())
                .param("promisedOn", to.promisedOn());
        if (before == 0) {
            statement = statement
                    .param("branch", branchId)
                    .param("project", projectId)
                    .param("item", asked.code());
        }
        if (statement.update() == 0) {
            throw new EditedMeanwhile(before, to.version());
        }
    }

    void add(UUID branchId, UUID projectId, AnswerRow answer, Given given, Actor by, Instant at) {
        Given.Read read = given instanceof Given.Read one ? one : null;
        jdbc.sql("""
                insert into gate_answer_part (id, branch_id, project_id, answer_id, kind, number, text, label, on_date,
                                              evidence_id, note, at, by_person_id, by_name, since_version)
                values (:id, :branch, :project, :answer, :kind, cast(:number as numeric), :text, :label,
                        cast(:date as date), cast(:evidence as uuid), :note, :at, cast(:person as uuid), :name, :version)
                """)
                .param("id", Ids.next())
                .param("branch", branchId)
                .param("project", projectId)
                .param("answer", answer.id())
                .param("kind", given.kind().name())
                .param("number", read == null ? null : read.value())
                .param("text", read == null ? "" : read.text().strip())
                .param("label", read == null ? "" : read.label().strip())
                .param("date", given instanceof Given.OnDate on ? on.date() : null)
                .param(
                        "evidence",
                        given instanceof Given.Kept kept ? kept.evidenceId().toString() : null)
                .param("note", note(given))
                .param("at", utc(at))
                .param("person", by.personId() == null ? null : by.personId().toString())
                .param("name", by.name())
                .param("version", answer.version())
                .update();
    }

    private static String note(Given given) {
        if (given instanceof Given.Read read) {
            return read.explanation().strip();
        }
        return given instanceof Given.Confirmed confirmed ? confirmed.note().strip() : "";
    }

    /** Ends parts; they stay kept. */
    void end(List<AnswerPart> parts, long version) {
        if (!parts.isEmpty()) {
            jdbc.sql("update gate_answer_part set ended_version = :version where id in (:ids)")
                    .param("version", version)
                    .param("ids", parts.stream().map(AnswerPart::id).toList())
                    .update();
        }
    }

    /** Brings back what an act ended, once that act is undone. */
    void revive(UUID answerId, long endedBy) {
        jdbc.sql("update gate_answer_part set ended_version = null where answer_id = ? and ended_version = ?")
                .params(answerId, endedBy)
                .update();
    }

    static OffsetDateTime utc(Instant at) {
        return OffsetDateTime.ofInstant(at, ZoneOffset.UTC);
    }
}
