package org.plumbrow.schedule.pace;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.branch.PlanningSettings;
import org.plumbrow.calc.duration.DurationTables;
import org.plumbrow.calc.duration.PaceLearning;
import org.plumbrow.schedule.activity.FinishedWork;
import org.plumbrow.schedule.activity.LearnedRates;
import org.plumbrow.web.NaturalOrder;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads what a branch has learned, with every work from which it did. */
@Service
@Transactional(readOnly = true)
class PaceReading {

    private static final String WORKS = """
            select f.rate_code, f.project_id, p.name as project, a.key, a.words as activity, f.crew_id, c.name as crew,
                   f.quantity, f.crew_days, f.done_on, f.from_reports
              from finished_work f
              join activity a on a.id = f.activity_id
              join project p on p.id = f.project_id
              join crew c on c.id = f.crew_id
             where f.branch_id = ?
             order by f.done_on desc, p.name, a.position
            """;

    private final FinishedWork finished;
    private final BranchSettings settings;
    private final JdbcClient jdbc;

    PaceReading(FinishedWork finished, BranchSettings settings, JdbcClient jdbc) {
        this.finished = finished;
        this.settings = settings;
        this.jdbc = jdbc;
    }

    private record Known(String rateCode, UUID crewId, PaceView.Work work) {}

    PaceView of(UUID branchId) {
        PlanningSettings with = settings.forPlanning(branchId);
        Map<String, List<Known>> byRate =
                jdbc.sql(WORKS).param(branchId).query((row, n) -> known(row, with.durations())).list().stream()
                        .collect(Collectors.groupingBy(Known::rateCode));
        return new PaceView(
                finished.learned(with).rows().stream()
                        .map(row -> row(row, byRate.get(row.all().prior().code())))
                        .toList(),
                PaceLearning.TABLE_CREW_DAYS);
    }

    private static PaceView.Row row(LearnedRates.OfRow row, List<Known> works) {
        Map<UUID, String> names = works.stream()
                .collect(Collectors.toMap(Known::crewId, known -> known.work().crew(), (one, same) -> one));
        return new PaceView.Row(
                row.all().prior().words(),
                row.all(),
                row.byCrew().entrySet().stream()
                        .map(entry -> new PaceView.OfCrew(names.get(entry.getKey()), entry.getValue()))
                        .sorted(Comparator.comparing(PaceView.OfCrew::name, NaturalOrder.OF_NAMES))
                        .toList(),
                works.stream().map(Known::work).toList());
    }

    private static Known known(ResultSet row, DurationTables table) throws SQLException {
        String code = row.getString("rate_code");
        double quantity = row.getDouble("quantity");
        return new Known(
                code,
                row.getObject("crew_id", UUID.class),
                new PaceView.Work(
                        row.getObject("project_id", UUID.class),
                        row.getString("project"),
                        row.getString("key"),
                        row.getString("activity"),
                        row.getString("crew"),
                        quantity,
                        row.getDouble("crew_days"),
                        quantity / table.rate(code).typical(),
                        row.getObject("done_on", java.time.LocalDate.class),
                        row.getBoolean("from_reports")));
    }
}
