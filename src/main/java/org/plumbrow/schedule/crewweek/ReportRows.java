package org.plumbrow.schedule.crewweek;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.sql.Types;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.database.Ids;
import org.plumbrow.project.WrittenDown;
import org.plumbrow.schedule.crewweek.ReportSheet.Written;
import org.plumbrow.web.Actor;
import org.plumbrow.web.EditedMeanwhile;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Daily reports as they are stored. */
@Repository
class ReportRows {

    private static final String FIND = """
            select id, version, people, hours, weather, weather_hours, trouble, reported_at, reported_by, received_at, phone_at
              from daily_report where project_id = :project and crew_id = :crew and day = :day
            """;
    private static final String INSERT = """
            insert into daily_report (id, branch_id, project_id, crew_id, day, people, hours, weather, weather_hours,
                                      trouble, reported_at, reported_by, received_at, phone_at)
            values (:id, :branch, :project, :crew, :day, :people, :hours, :weather, :weatherHours, :trouble, :at, :by,
                    :received, :phone)
            """;
    private static final String UPDATE = """
            update daily_report
               set version = version + 1, people = :people, hours = :hours, weather = :weather,
                   weather_hours = :weatherHours, trouble = :trouble, reported_at = :at, reported_by = :by,
                   received_at = :received, phone_at = :phone
             where id = :id and version = :version
            """;
    private static final String BEFORE = """
            select l.activity_id, coalesce(sum(l.quantity), 0) as quantity, sum(l.hours) as hours
              from daily_report_line l join daily_report r on r.id = l.report_id
             where r.project_id = :project and not (r.crew_id = :crew and r.day = :day)
             group by l.activity_id
            """;

    private final JdbcClient jdbc;

    ReportRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Which report. */
    record Of(UUID branchId, UUID projectId, UUID crewId, LocalDate day) {}

    Optional<Written> find(Of of) {
        return jdbc.sql(FIND)
                .param("project", of.projectId)
                .param("crew", of.crewId)
                .param("day", of.day)
                .query((row, n) -> written(row))
                .optional();
    }

    private Written written(ResultSet row) throws SQLException {
        UUID id = row.getObject("id", UUID.class);
        List<DailyReport.Line> lines = jdbc.sql(
                        "select activity_id, quantity, hours, done from daily_report_line where report_id = ?")
                .param(id)
                .query(DailyReport.Line.class)
                .list();
        DailyReport report = new DailyReport(
                row.getLong("version"),
                row.getInt("people"),
                row.getBigDecimal("hours"),
                DayWeather.valueOf(row.getString("weather")),
                row.getBigDecimal("weather_hours"),
                row.getString("trouble"),
                lines);
        return new Written(id, report, row.getString("reported_by"), writtenDown(row, "reported_at"));
    }

    /** @param at name of the column that says when it happened */
    static WrittenDown writtenDown(ResultSet row, String at) throws SQLException {
        Timestamp phone = row.getTimestamp("phone_at");
        return new WrittenDown(
                row.getTimestamp(at).toInstant(),
                row.getTimestamp("received_at").toInstant(),
                phone == null ? null : phone.toInstant());
    }

    static @Nullable Timestamp phone(WrittenDown when) {
        return when.phone() == null ? null : Timestamp.from(when.phone());
    }

    /** What the other reports of the project say, by activity. */
    record Before(double quantity, double hours) {}

    Map<UUID, Before> others(Of of) {
        Map<UUID, Before> before = new HashMap<>();
        jdbc.sql(BEFORE)
                .param("project", of.projectId)
                .param("crew", of.crewId)
                .param("day", of.day)
                .query(row -> {
                    before.put(
                            row.getObject("activity_id", UUID.class),
                            new Before(row.getDouble("quantity"), row.getDouble("hours")));
                });
        return before;
    }

    /** @throws EditedMeanwhile if somebody wrote it after it was opened */
    void write(Of of, Optional<Written> known, DailyReport report, Actor by, WrittenDown when) {
        long stored = known.map(now -> now.report().version()).orElse(DailyReport.NONE);
        EditedMeanwhile.check(report.version(), stored);
        UUID id = known.map(Written::id).orElseGet(Ids::next);
        JdbcClient.StatementSpec change = jdbc.sql(known.isPresent() ? UPDATE : INSERT)
                .param("id", id)
                .param("version", report.version())
                .param("branch", of.branchId)
                .param("project", of.projectId)
                .param("crew", of.crewId)
                .param("day", of.day)
                .param("people", report.people())
                .param("hours", report.hours())
                .param("weather", report.weather().name())
                .param("weatherHours", report.weatherHours())
                .param("trouble", report.trouble())
                .param("at", Timestamp.from(when.at()))
                .param("received", Timestamp.from(when.received()))
                .param("phone", phone(when), Types.TIMESTAMP)
                .param("by", by.name());
        try {
            if (change.update() == 0) {
                throw new EditedMeanwhile(report.version(), stored + 1);
            }
        } catch (DuplicateKeyException faster) {
            throw new EditedMeanwhile(report.version(), 0);
        }
        writeLines(of, id, report.lines());
    }

    private void writeLines(Of of, UUID id, List<DailyReport.Line> lines) {
        jdbc.sql("delete from daily_report_line where report_id = ?").param(id).update();
        for (DailyReport.Line line : lines) {
            jdbc.sql("""
                    insert into daily_report_line (report_id, activity_id, branch_id, quantity, hours, done)
                    values (:report, :activity, :branch, :quantity, :hours, :done)
                    """)
                    .param("report", id)
                    .param("activity", line.activityId())
                    .param("branch", of.branchId)
                    .param("quantity", line.quantity(), Types.NUMERIC)
                    .param("hours", line.hours())
                    .param("done", line.done())
                    .update();
        }
    }

    void addPhoto(Of of, UUID evidenceId) {
        jdbc.sql("""
                insert into daily_report_photo (project_id, crew_id, day, evidence_id, branch_id) values (?, ?, ?, ?, ?)
                on conflict do nothing
                """)
                .params(of.projectId, of.crewId, of.day, evidenceId, of.branchId)
                .update();
    }

    List<UUID> photos(Of of) {
        return jdbc.sql("select evidence_id from daily_report_photo where project_id = ? and crew_id = ? and day = ?")
                .params(of.projectId, of.crewId, of.day)
                .query(UUID.class)
                .list();
    }

    /** Days and projects of which there is a report of the crew, from a day to another. */
    record Day(UUID projectId, LocalDate day) {}

    List<Day> reported(UUID crewId, LocalDate from, LocalDate to) {
        return jdbc.sql("select project_id, day from daily_report where crew_id = ? and day between ? and ?")
                .params(crewId, from, to)
                .query(Day.class)
                .list();
    }

    static BigDecimal plain(BigDecimal figure) {
        BigDecimal bare = figure.stripTrailingZeros();
        return bare.scale() < 0 ? bare.setScale(0) : bare;
    }
}
