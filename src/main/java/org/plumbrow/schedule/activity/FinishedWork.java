package org.plumbrow.schedule.activity;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.plumbrow.branch.PlanningSettings;
import org.plumbrow.calc.duration.DoneWork;
import org.plumbrow.database.ReadOnce;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** The finished work of a branch as it is stored; one query, once a page. */
@Component
public class FinishedWork {

    private final JdbcClient jdbc;

    FinishedWork(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** What the branch has learned from it. */
    public LearnedRates learned(PlanningSettings settings) {
        Map<String, Map<UUID, List<DoneWork>>> works = new HashMap<>();
        for (Row row : rows(settings.branch().id())) {
            works.computeIfAbsent(row.rateCode, code -> new HashMap<>())
                    .computeIfAbsent(row.crewId, crew -> new ArrayList<>())
                    .add(new DoneWork(row.quantity, row.crewDays));
        }
        return new LearnedRates(settings.durations(), works);
    }

    private record Row(String rateCode, UUID crewId, double quantity, double crewDays) {}

    private record OfBranch(UUID branchId) {}

    private List<Row> rows(UUID branchId) {
        return ReadOnce.of(
                new OfBranch(branchId),
                () -> jdbc.sql("""
                select rate_code, crew_id, quantity, crew_days from finished_work
                 where branch_id = ? order by done_on, activity_id
                """).param(branchId).query(Row.class).list());
    }
}
