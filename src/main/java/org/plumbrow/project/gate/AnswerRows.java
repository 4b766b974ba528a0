package org.plumbrow.project.gate;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.plumbrow.database.Ids;
import org.plumbrow.project.Duty;
import org.plumbrow.project.Stage;
import org.plumbrow.web.Actor;
import org.plumbrow.web.EditedMeanwhile;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The rows of what was answered. Each act on an item counts its version up by one. */
@Repository
class AnswerRows {

    private static final String ANSWERS = """
            select a.*, p.id as part_id, p.kind, p.number, p.text, p.label, p.on_date, p.evidence_id, p.note, p.at,
                   p.by_name, p.since_version
              from gate_answer a left join gate_answer_part p on p.answer_id = a.id and p.ended_version is null
             where a.project_id = :project and split_part(a.item, '.', 1) in (:stages)
             order by p.at, p.id
            """;
    private static final String NEW = """
            insert into gate_answer (id, branch_id, project_id, item, version, stand, words, kinds, unit, low, high, least,
                                     required, safety, reason, stand_by, stand_at, waits_on, promised_on)
            values (?, ?, ?, ?, ?, ?, ?, ?, ?, cast(? as numeric), cast(? as numeric), ?, ?, ?, cast(? as text),
                    cast(? as text), cast(? as timestamptz), cast(? as text), cast(? as date))
            on conflict (project_id, item) do nothing
            """;
    private static final String CHANGED = """
            update gate_answer
               set version = ?, stand = ?, words = ?, kinds = ?, unit = ?, low = cast(? as numeric),
                   high = cast(? as numeric), least = ?, required = ?, safety = ?, reason = cast(? as text),
                   stand_by = cast(? as text), stand_at = cast(? as timestamptz), waits_on = cast(? as text),
                   promised_on = cast(? as date)
             where id = ? and version = ?
            """;
    private static final String PART = """
            insert into gate_answer_part (id, branch_id, project_id, answer_id, kind, number, text, label, on_date,
                                          evidence_id, note, at, by_person_id, by_name, since_version)
            values (?, ?, ?, ?, ?, cast(? as numeric), ?, ?, cast(? as date), cast(? as uuid), ?, ?, cast(? as uuid), ?, ?)
            """;

    private final JdbcClient jdbc;
    private final JdbcTemplate batches;

    AnswerRows(JdbcClient jdbc, JdbcTemplate batches) {
        this.jdbc = jdbc;
        this.batches = batches;
    }

    /** What was answered at the items of these gates, by item; one query. */
    Map<String, AnswerRow> of(UUID projectId, List<Stage> stages) {
        Map<String, AnswerRow> rows = new HashMap<>();
        Map<String, List<AnswerPart>> parts = new HashMap<>();
        jdbc.sql(ANSWERS)
                .param("project", projectId)
                .param("stages", stages.stream().map(AnswerRows::beginning).toList())
                .query(row -> {
                    String item = row.getString("item");
                    if (!rows.containsKey(item)) {
                        rows.put(item, row(row));
                    }
                    if (row.getObject("part_id") != null) {
                        parts.computeIfAbsent(item, key -> new ArrayList<>()).add(part(row));
                    }
                });
        rows.replaceAll((item, row) -> row.with(parts.getOrDefault(item, List.of())));
        return rows;
    }

    private static String beginning(Stage stage) {
        return stage.name().toLowerCase(Locale.ROOT);
    }

    private static AnswerRow row(ResultSet row) throws SQLException {
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
                row.getObject("part_id", UUID.class),
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
     * Writes the rows as they stand from now on, each with its next version.
     *
     * @throws EditedMeanwhile if somebody was faster at one of them
     */
    void write(UUID branchId, UUID projectId, List<Written> rows) {
        List<Written> first = rows.stream().filter(row -> row.to.version() == 1).toList();
        List<Written> again = rows.stream().filter(row -> row.to.version() > 1).toList();
        checked(
                first,
                batches.batchUpdate(
                        NEW,
                        first.stream()
                                .map(row -> added(branchId, projectId, row))
                                .toList()));
        checked(
                again,
                batches.batchUpdate(
                        CHANGED, again.stream().map(AnswerRows::changed).toList()));
    }

    /** A row as it is to stand, and what is asked there. */
    record Written(AskedItem asked, AnswerRow to) {}

    private static void checked(List<Written> rows, int[] written) {
        for (int n = 0; n < written.length; n++) {
            if (written[n] == 0) {
                long version = rows.get(n).to.version();
                throw new EditedMeanwhile(version - 1, version);
            }
        }
    }

    private static Object[] added(UUID branchId, UUID projectId, Written row) {
        return Stream.concat(Stream.of(row.to.id(), branchId, projectId, row.asked.code()), Arrays.stream(values(row)))
                .toArray();
    }

    private static Object[] changed(Written row) {
        return Stream.concat(Arrays.stream(values(row)), Stream.of(row.to.id(), row.to.version() - 1))
                .toArray();
    }

    private static @Nullable Object[] values(Written row) {
        AnswerRow to = row.to;
        AskedItem asked = row.asked;
        return new @Nullable Object[] {
            to.version(),
            to.stand().name(),
            asked.words(),
            AnswerKind.write(asked.kinds()),
            asked.unit(),
            asked.low(),
            asked.high(),
            asked.least(),
            asked.required(),
            asked.safety(),
            to.reason(),
            to.standBy(),
            to.standAt() == null ? null : utc(to.standAt()),
            to.waitsOn(),
            to.promisedOn()
        };
    }

    /** Adds the parts that somebody gave at these rows. */
    void add(UUID branchId, UUID projectId, List<Part> parts, Actor by, Instant at) {
        batches.batchUpdate(
                PART,
                parts.stream()
                        .map(part -> values(branchId, projectId, part, by, at))
                        .toList());
    }

    record Part(AnswerRow answer, Given given) {}

    private static @Nullable Object[] values(UUID branchId, UUID projectId, Part part, Actor by, Instant at) {
        Given given = part.given;
        Given.Read read = given instanceof Given.Read one ? one : null;
        return new @Nullable Object[] {
            Ids.next(),
            branchId,
            projectId,
            part.answer.id(),
            given.kind().name(),
            read == null ? null : read.value(),
            read == null ? "" : read.text().strip(),
            read == null ? "" : read.label().strip(),
            given instanceof Given.OnDate on ? on.date() : null,
            given instanceof Given.Kept kept ? kept.evidenceId().toString() : null,
            note(given),
            utc(at),
            by.personId() == null ? null : by.personId().toString(),
            by.name(),
            part.answer.version()
        };
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
