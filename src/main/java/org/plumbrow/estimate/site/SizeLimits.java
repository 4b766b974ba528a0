package org.plumbrow.estimate.site;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.ChangeLog;
import org.plumbrow.branch.Written;
import org.plumbrow.calc.finance.SizeLimit;
import org.plumbrow.database.Ids;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.Entered;
import org.plumbrow.web.May;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What no system of a branch may exceed: its own policy, and each utility's cap. */
@Service
@Transactional
public class SizeLimits {

    private static final String LIMIT = "select l.utility_id, l.version, l.most_offset_percent, l.most_kw_ac, u.name"
            + " from size_limit l left join utility u on u.id = l.utility_id where l.branch_id = :branch";

    private final JdbcClient jdbc;
    private final ChangeLog log;
    private final Access access;

    SizeLimits(JdbcClient jdbc, ChangeLog log, Access access) {
        this.jdbc = jdbc;
        this.log = log;
        this.access = access;
    }

    /**
     * @param utilityId null for the branch's own policy
     * @param version -1 while nobody has said anything
     * @param whose "Branch policy", "Valley Electric"
     * @param mostOffsetPercent of the year's use; null for no limit
     * @param mostKwAc null for no limit
     */
    public record Limit(
            @Nullable UUID utilityId,
            long version,
            String whose,
            @Nullable Double mostOffsetPercent,
            @Nullable Double mostKwAc) {

        List<Written> written() {
            return List.of(
                    Written.of("At most, % of the year’s use", "mostOffsetPercent", Entered.written(mostOffsetPercent)),
                    Written.of("At most, kW AC", "mostKwAc", Entered.written(mostKwAc)));
        }

        List<SizeLimit> calc() {
            List<SizeLimit> limits = new ArrayList<>();
            if (mostOffsetPercent != null) {
                limits.add(new SizeLimit(SizeLimit.Kind.OFFSET, mostOffsetPercent / 100, whose));
            }
            if (mostKwAc != null) {
                limits.add(new SizeLimit(SizeLimit.Kind.KW_AC, mostKwAc, whose));
            }
            return limits;
        }
    }

    static final String POLICY = "Branch policy";

    /** Of the branch and of this utility, as far as anything was said. */
    @Transactional(readOnly = true)
    public List<Limit> of(UUID branchId, @Nullable UUID utilityId) {
        return jdbc.sql(LIMIT + " and (l.utility_id is null or l.utility_id = :utility) order by u.name nulls first")
                .param("branch", branchId)
                .param("utility", utilityId, java.sql.Types.OTHER)
                .query(SizeLimits::limit)
                .list();
    }

    @Transactional(readOnly = true)
    public List<Limit> ofBranch(UUID branchId) {
        return jdbc.sql(LIMIT + " order by u.name nulls first")
                .param("branch", branchId)
                .query(SizeLimits::limit)
                .list();
    }

    Optional<Limit> one(UUID branchId, @Nullable UUID utilityId) {
        return jdbc.sql(LIMIT + " and l.utility_id is not distinct from cast(:utility as uuid)")
                .param("branch", branchId)
                .param("utility", utilityId == null ? null : utilityId.toString(), java.sql.Types.VARCHAR)
                .query(SizeLimits::limit)
                .optional();
    }

    /** @throws EditedMeanwhile if somebody was faster */
    public void change(UUID branchId, long version, Limit to) {
        access.require(branchId, May.CHANGE_SETTINGS);
        Optional<Limit> before = one(branchId, to.utilityId());
        long now = before.map(Limit::version).orElse(-1L);
        EditedMeanwhile.check(version, now);
        if (!write(branchId, version, to)) {
            throw new EditedMeanwhile(version, now);
        }
        List<Written> was = before.map(Limit::written).orElse(List.of());
        log.changed(branchId, access.actor(), "size limit, " + to.whose(), was, to.written());
    }

    private boolean write(UUID branchId, long version, Limit to) {
        UUID utility = to.utilityId();
        return jdbc.sql("""
                insert into size_limit as l (id, branch_id, utility_id, most_offset_percent, most_kw_ac)
                values (:id, :branch, cast(:utility as uuid), :offset, :kw)
                on conflict (branch_id, utility_id) do update
                   set most_offset_percent = excluded.most_offset_percent, most_kw_ac = excluded.most_kw_ac,
                       version = l.version + 1
                 where l.version = :version
                """)
                        .param("id", Ids.next())
                        .param("branch", branchId)
                        .param("utility", utility == null ? null : utility.toString(), java.sql.Types.VARCHAR)
                        .param("offset", to.mostOffsetPercent(), java.sql.Types.NUMERIC)
                        .param("kw", to.mostKwAc(), java.sql.Types.NUMERIC)
                        .param("version", version)
                        .update()
                == 1;
    }

    private static Limit limit(ResultSet row, int number) throws SQLException {
        String name = row.getString("name");
        return new Limit(
                row.getObject("utility_id", UUID.class),
                row.getLong("version"),
                name == null ? POLICY : name,
                figure(row, "most_offset_percent"),
                figure(row, "most_kw_ac"));
    }

    private static @Nullable Double figure(ResultSet row, String column) throws SQLException {
        double value = row.getDouble(column);
        return row.wasNull() ? null : value;
    }
}
