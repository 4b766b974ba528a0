package org.plumbrow.permit;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of waits. */
@Repository
class AwaitedRows {

    private static final int MOST = 2_000;

    private final JdbcClient jdbc;

    AwaitedRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** What is open first, what came last at the end. */
    List<Awaited> ofProject(UUID projectId) {
        return jdbc.sql("""
                select * from awaited where project_id = ?
                 order by received_on nulls first, coalesce(promised_on, due_on) nulls last, sent_on, id
                """).param(projectId).query(AwaitedRows::awaited).list();
    }

    Optional<Awaited> find(UUID projectId, UUID id) {
        return jdbc.sql("select * from awaited where project_id = ? and id = ?")
                .params(projectId, id)
                .query(AwaitedRows::awaited)
                .optional();
    }

    record OfProject(Awaited awaited, String number, String name) {}

    /** What has not come yet, of all projects that are not called off. */
    List<OfProject> open(UUID branchId) {
        return jdbc.sql("""
                select a.*, p.number as project_number, p.name as project_name
                  from awaited a join project p on p.id = a.project_id
                 where a.branch_id = :branch and a.received_on is null and p.standing <> 'CALLED_OFF'
                 order by coalesce(a.promised_on, a.due_on) nulls last, p.number, a.id limit :most
                """)
                .param("branch", branchId)
                .param("most", MOST)
                .query((row, n) ->
                        new OfProject(awaited(row, n), row.getString("project_number"), row.getString("project_name")))
                .list();
    }

    /** What came, the last first, behind what has not come yet. */
    List<Awaited> all(UUID branchId) {
        return jdbc.sql("""
                select * from awaited where branch_id = :branch
                 order by received_on desc nulls first, id limit :most
                """)
                .param("branch", branchId)
                .param("most", MOST)
                .query(AwaitedRows::awaited)
                .list();
    }

    /** What came, newest first: lead times are learned from the newest so many. */
    List<Awaited> came(UUID branchId) {
        return jdbc.sql("""
                select * from awaited where branch_id = :branch and received_on is not null
                 order by received_on desc, id limit :most
                """)
                .param("branch", branchId)
                .param("most", MOST)
                .query(AwaitedRows::awaited)
                .list();
    }

    void add(UUID branchId, Awaited one) {
        statement("""
                insert into awaited (id, version, branch_id, project_id, kind, wait_code, about, owed_by, utility_id,
                    permit_office_id, owed_name, sent_on, promised_on, due_on, expires_on, received_on, result, paper_id, note)
                values (:id, 0, :branch, :project, :kind, :code, :about, :by, :utility, :office, :name, :sent, :promised, :due,
                    :expires, :received, :result, :paper, :note)
                """, one).param("branch", branchId).update();
    }

    /** @return whether its version was still the one */
    boolean change(Awaited one) {
        return statement("""
                update awaited set version = version + 1, kind = :kind, wait_code = :code, about = :about, owed_by = :by,
                    utility_id = :utility, permit_office_id = :office, owed_name = :name, sent_on = :sent,
                    promised_on = :promised, due_on = :due, expires_on = :expires, received_on = :received, result = :result,
                    paper_id = :paper, note = :note
                 where id = :id and project_id = :project and version = :version
                """, one).param("version", one.version()).update() == 1;
    }

    private JdbcClient.StatementSpec statement(String sql, Awaited one) {
        return jdbc.sql(sql)
                .param("id", one.id())
                .param("project", one.projectId())
                .param("kind", one.kind().name())
                .param("code", one.waitCode())
                .param("about", one.about())
                .param("by", one.owedBy().name())
                .param("utility", one.utilityId(), Types.OTHER)
                .param("office", one.permitOfficeId(), Types.OTHER)
                .param("name", one.owedName())
                .param("sent", one.sentOn(), Types.DATE)
                .param("promised", one.promisedOn(), Types.DATE)
                .param("due", one.dueOn(), Types.DATE)
                .param("expires", one.expiresOn(), Types.DATE)
                .param("received", one.receivedOn(), Types.DATE)
                .param("result", one.result() == null ? null : one.result().name(), Types.VARCHAR)
                .param("paper", one.paperId(), Types.OTHER)
                .param("note", one.note());
    }

    static Awaited awaited(ResultSet row, int number) throws SQLException {
        String result = row.getString("result");
        return new Awaited(
                row.getObject("id", UUID.class),
                row.getLong("version"),
                row.getObject("project_id", UUID.class),
                AwaitedKind.valueOf(row.getString("kind")),
                row.getString("wait_code"),
                row.getString("about"),
                OwedBy.valueOf(row.getString("owed_by")),
                row.getObject("utility_id", UUID.class),
                row.getObject("permit_office_id", UUID.class),
                row.getString("owed_name"),
                row.getObject("sent_on", LocalDate.class),
                row.getObject("promised_on", LocalDate.class),
                row.getObject("due_on", LocalDate.class),
                row.getObject("expires_on", LocalDate.class),
                row.getObject("received_on", LocalDate.class),
                result == null ? null : WaitResult.valueOf(result),
                row.getObject("paper_id", UUID.class),
                row.getString("note"));
    }
}
