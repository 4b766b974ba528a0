package org.plumbrow.cutover.daylog;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.sql.Types;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.electrical.Service;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The rows of the day log. Entries and steps are only ever added. */
@Repository
class LogRows {

    private static final String ENTRIES = """
            select e.*, s.part, s.name, s.trade
              from day_log_entry e left join day_log_signature s on s.entry_id = e.id
             where e.day_log_id = ? order by e.stored_at, e.device, e.number
            """;

    private final JdbcClient jdbc;

    LogRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** @return false when the window has its log already */
    boolean open(DayLog log, List<LogStep> steps) {
        int opened = jdbc.sql("""
                insert into day_log (id, version, branch_id, project_id, window_id, service, generator, person_in_charge,
                                     opened_at, opened_by, design_revision)
                values (:id, 0, :branch, :project, :window, :service, :generator, :person, :at, :by, :revision)
                on conflict (window_id) do nothing
                """)
                .param("id", log.id())
                .param("branch", log.branchId())
                .param("project", log.projectId())
                .param("window", log.windowId())
                .param("service", log.service().name())
                .param("generator", log.generator())
                .param("person", log.personInCharge())
                .param("at", Timestamp.from(log.openedAt()))
                .param("by", log.openedBy())
                .param("revision", log.designRevision(), Types.VARCHAR)
                .update();
        if (opened == 1) {
            steps.forEach(step -> addStep(log, step));
        }
        return opened == 1;
    }

    private void addStep(DayLog log, LogStep step) {
        jdbc.sql("""
                insert into day_log_step (day_log_id, code, branch_id, position, hold, words, what, who, typical_minutes, why_not, named)
                values (:log, :code, :branch, :position, :hold, :words, :what, :who, :minutes, :whyNot, :named)
                """)
                .param("log", log.id())
                .param("code", step.code())
                .param("branch", log.branchId())
                .param("position", step.position())
                .param("hold", step.hold())
                .param("words", step.words())
                .param("what", step.what())
                .param("who", step.who())
                .param("minutes", step.typicalMinutes())
                .param("whyNot", step.whyNot(), Types.VARCHAR)
                .param("named", step.named(), Types.VARCHAR)
                .update();
    }

    Optional<DayLog> find(UUID id) {
        return jdbc.sql("select * from day_log where id = ?")
                .param(id)
                .query(LogRows::log)
                .optional();
    }

    Optional<DayLog> ofWindow(UUID windowId) {
        return jdbc.sql("select * from day_log where window_id = ?")
                .param(windowId)
                .query(LogRows::log)
                .optional();
    }

    /** The log that was opened last. */
    Optional<DayLog> latest(UUID projectId) {
        return jdbc.sql("select * from day_log where project_id = ? order by opened_at desc, id desc limit 1")
                .param(projectId)
                .query(LogRows::log)
                .optional();
    }

    /** The logs of all days of the project, newest first. */
    List<DayLogSheet.PastLog> ofProject(UUID projectId) {
        return jdbc.sql("""
                select l.window_id, w.day, l.outcome from day_log l join outage_window w on w.id = l.window_id
                 where l.project_id = ? order by l.opened_at desc, l.id desc
                """)
                .param(projectId)
                .query((row, n) -> new DayLogSheet.PastLog(
                        row.getObject("window_id", UUID.class),
                        row.getObject("day", LocalDate.class),
                        outcome(row.getString("outcome"))))
                .list();
    }

    private static DayLog.@Nullable Outcome outcome(@Nullable String name) {
        return name == null ? null : DayLog.Outcome.valueOf(name);
    }

    /** Nobody else writes into this log until the transaction ends: rules and order hold for two phones at once. */
    DayLog locked(UUID id) {
        return jdbc.sql("select * from day_log where id = ? for update")
                .param(id)
                .query(LogRows::log)
                .single();
    }

    void close(UUID id, DayLog.Outcome outcome, Instant at) {
        jdbc.sql("update day_log set closed_at = ?, outcome = ?, version = version + 1 where id = ?")
                .params(Timestamp.from(at), outcome.name(), id)
                .update();
    }

    List<LogStep> steps(UUID logId) {
        return jdbc.sql("select * from day_log_step where day_log_id = ? order by position")
                .param(logId)
                .query(LogRows::step)
                .list();
    }

    List<LogEntry> entries(UUID logId) {
        return jdbc.sql(ENTRIES).param(logId).query(LogRows::entry).list();
    }

    boolean knows(UUID entryId) {
        return jdbc.sql("select exists (select 1 from day_log_entry where id = ?)")
                .param(entryId)
                .query(Boolean.class)
                .single();
    }

    /** Where this device's next entry stands; the log is locked. */
    long nextNumber(UUID logId, String device) {
        return jdbc.sql("select coalesce(max(number), 0) + 1 from day_log_entry where day_log_id = ? and device = ?")
                .params(logId, device)
                .query(Long.class)
                .single();
    }

    void add(DayLog log, LogEntry entry, @Nullable UUID personId, int format) {
        LogEntry.PhoneTime phone = entry.phone();
        jdbc.sql("""
                insert into day_log_entry (id, branch_id, day_log_id, step, kind, quantity, value, reason, corrects, evidence_id,
                                           happened_at, phone_time, clock_offset_ms, device, number, format, stored_at, by_person_id, by_name)
                values (:id, :branch, :log, :step, :kind, :quantity, :value, :reason, :corrects, :evidence,
                        :happened, :phone, :offset, :device, :number, :format, :stored, :person, :name)
                """)
                .param("id", entry.id())
                .param("branch", log.branchId())
                .param("log", log.id())
                .param("step", entry.step())
                .param("kind", entry.kind().name())
                .param("quantity", entry.quantity(), Types.VARCHAR)
                .param("value", entry.value(), Types.VARCHAR)
                .param("reason", entry.reason(), Types.VARCHAR)
                .param("corrects", entry.corrects(), Types.OTHER)
                .param("evidence", entry.evidenceId(), Types.OTHER)
                .param("happened", Timestamp.from(entry.happenedAt()))
                .param("phone", phone == null ? null : Timestamp.from(phone.time()), Types.TIMESTAMP)
                .param("offset", phone == null ? null : phone.offsetMs(), Types.BIGINT)
                .param("device", entry.device())
                .param("number", entry.number())
                .param("format", format)
                .param("stored", Timestamp.from(entry.storedAt()))
                .param("person", personId, Types.OTHER)
                .param("name", entry.byName())
                .update();
    }

    void addSignature(DayLog log, LogEntry entry, LogEntry.Signature signature) {
        jdbc.sql("""
                insert into day_log_signature (entry_id, branch_id, day_log_id, hold, part, name, trade, evidence_id)
                values (:entry, :branch, :log, :hold, :part, :name, :trade, :evidence)
                """)
                .param("entry", entry.id())
                .param("branch", log.branchId())
                .param("log", log.id())
                .param("hold", entry.step())
                .param("part", signature.part().name())
                .param("name", signature.name())
                .param("trade", signature.trade())
                .param("evidence", entry.evidenceId(), Types.OTHER)
                .update();
    }

    static DayLog log(ResultSet row, int number) throws SQLException {
        Timestamp closed = row.getTimestamp("closed_at");
        String outcome = row.getString("outcome");
        return new DayLog(
                row.getObject("id", UUID.class),
                row.getObject("branch_id", UUID.class),
                row.getObject("project_id", UUID.class),
                row.getObject("window_id", UUID.class),
                Service.valueOf(row.getString("service")),
                row.getBoolean("generator"),
                row.getString("person_in_charge"),
                row.getTimestamp("opened_at").toInstant(),
                row.getString("opened_by"),
                closed == null ? null : closed.toInstant(),
                outcome(outcome),
                row.getString("design_revision"));
    }

    static LogStep step(ResultSet row, int number) throws SQLException {
        return new LogStep(
                row.getString("code"),
                row.getInt("position"),
                row.getBoolean("hold"),
                row.getString("words"),
                row.getString("what"),
                row.getString("who"),
                row.getInt("typical_minutes"),
                row.getString("why_not"),
                row.getString("named"));
    }

    static LogEntry entry(ResultSet row, int number) throws SQLException {
        String part = row.getString("part");
        return new LogEntry(
                row.getObject("id", UUID.class),
                row.getString("step"),
                EntryKind.valueOf(row.getString("kind")),
                row.getString("quantity"),
                row.getString("value"),
                row.getString("reason"),
                row.getObject("corrects", UUID.class),
                row.getObject("evidence_id", UUID.class),
                row.getTimestamp("happened_at").toInstant(),
                row.getString("device"),
                row.getLong("number"),
                row.getTimestamp("stored_at").toInstant(),
                row.getString("by_name"),
                part == null
                        ? null
                        : new LogEntry.Signature(
                                Hold.Part.valueOf(part), row.getString("name"), row.getString("trade")),
                phoneTime(row));
    }

    private static LogEntry.@Nullable PhoneTime phoneTime(ResultSet row) throws SQLException {
        Timestamp time = row.getTimestamp("phone_time");
        return time == null ? null : new LogEntry.PhoneTime(time.toInstant(), row.getLong("clock_offset_ms"));
    }
}
