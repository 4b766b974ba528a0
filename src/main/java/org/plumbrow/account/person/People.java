package org.plumbrow.account.person;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.database.BranchWall;
import org.plumbrow.web.BranchCard;
import org.plumbrow.web.Role;
import org.plumbrow.web.Visitor;
import org.plumbrow.web.VisitorSource;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** Who somebody is: the person with all branches and roles, in one query. */
@Service
class People implements VisitorSource {

    private static final String PERSON_WITH_BRANCHES = """
            select p.id, p.name, p.email, p.last_branch_id, b.id as branch_id, b.code, b.name as branch_name, b.zone,
                   case when p.owns_firm then 'OWNER' else m.role end as role
              from person p
              left join membership m on m.person_id = p.id and not p.owns_firm
              left join branch b on b.id = m.branch_id or p.owns_firm
             where p.id = :person and p.ended_at is null
             order by b.name, b.id
            """;

    private final JdbcClient jdbc;
    private final TransactionTemplate transaction;

    People(JdbcClient jdbc, TransactionTemplate transaction) {
        this.jdbc = jdbc;
        this.transaction = transaction;
    }

    private record Row(
            String name,
            String email,
            @Nullable UUID lastBranch,
            @Nullable UUID branch,
            String code,
            String branchName,
            String zone,
            String role) {
        static Row of(ResultSet row, int number) throws SQLException {
            return new Row(
                    row.getString("name"),
                    row.getString("email"),
                    row.getObject("last_branch_id", UUID.class),
                    row.getObject("branch_id", UUID.class),
                    row.getString("code"),
                    row.getString("branch_name"),
                    row.getString("zone"),
                    row.getString("role"));
        }
    }

    @Override
    public Optional<Visitor> find(UUID personId) {
        List<Row> rows = BranchWall.everywhere(() -> transaction.execute(status -> jdbc.sql(PERSON_WITH_BRANCHES)
                .param("person", personId)
                .query(Row::of)
                .list()));
        if (rows == null || rows.isEmpty()) {
            return Optional.empty();
        }
        Row first = rows.get(0);
        return Optional.of(new Visitor(personId, first.name, first.email, branches(rows), first.lastBranch));
    }

    private static List<BranchCard> branches(List<Row> rows) {
        Map<UUID, Set<Role>> roles = new LinkedHashMap<>();
        Map<UUID, Row> byId = new LinkedHashMap<>();
        for (Row row : rows) {
            if (row.branch != null) {
                roles.computeIfAbsent(row.branch, id -> EnumSet.noneOf(Role.class))
                        .add(Role.valueOf(row.role));
                byId.put(row.branch, row);
            }
        }
        return byId.values().stream()
                .map(row -> new BranchCard(
                        row.branch, row.code, row.branchName, ZoneId.of(row.zone), Set.copyOf(roles.get(row.branch))))
                .toList();
    }

    @Override
    public void looksAt(UUID personId, UUID branchId) {
        transaction.executeWithoutResult(
                status -> jdbc.sql("update person set last_branch_id = :branch where id = :person")
                        .param("branch", branchId)
                        .param("person", personId)
                        .update());
    }
}
