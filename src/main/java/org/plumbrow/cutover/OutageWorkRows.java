package org.plumbrow.cutover;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.UUID;
import java.util.stream.Collectors;
import org.plumbrow.calc.duration.EquipmentKind;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The row that says what is done while the power is off; none as long as it is the usual. */
@Repository
class OutageWorkRows {

    private final JdbcClient jdbc;

    OutageWorkRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    WorkContent of(UUID projectId) {
        return jdbc.sql("select * from outage_work where project_id = ?")
                .param(projectId)
                .query(OutageWorkRows::content)
                .optional()
                .orElse(WorkContent.USUAL);
    }

    /** @return false when somebody saved it in between */
    boolean save(UUID projectId, UUID branchId, WorkContent content) {
        return jdbc.sql("""
                        insert into outage_work as w (project_id, version, branch_id, main_panel, meter_base, new_transformer,
                               current_transformers, meters, old_gear, planned_minutes, ready_on, ready_after, equipment)
                        values (:project, 1, :branch, :panel, :base, :transformer, :cts, :meters, :old, :minutes, :ready, :after, :equipment)
                        on conflict (project_id) do update
                           set version = w.version + 1, main_panel = :panel, meter_base = :base, new_transformer = :transformer,
                               current_transformers = :cts, meters = :meters, old_gear = :old, planned_minutes = :minutes,
                               ready_on = :ready, ready_after = :after, equipment = :equipment
                         where w.version = :version
                        """)
                        .param("project", projectId)
                        .param("branch", branchId)
                        .param("panel", content.mainPanel())
                        .param("base", content.meterBase())
                        .param("transformer", content.newTransformer())
                        .param("cts", content.currentTransformers())
                        .param("meters", content.meters())
                        .param("old", content.oldGear())
                        .param("minutes", content.plannedMinutes(), Types.INTEGER)
                        .param("ready", content.readyOn(), Types.DATE)
                        .param("after", content.readyAfter())
                        .param(
                                "equipment",
                                content.equipment().stream()
                                        .sorted()
                                        .map(Enum::name)
                                        .toArray(String[]::new))
                        .param("version", content.version())
                        .update()
                == 1;
    }

    private static WorkContent content(ResultSet row, int number) throws SQLException {
        return new WorkContent(
                row.getBoolean("main_panel"),
                row.getBoolean("meter_base"),
                row.getBoolean("new_transformer"),
                row.getBoolean("current_transformers"),
                row.getInt("meters"),
                row.getBoolean("old_gear"),
                row.getObject("planned_minutes", Integer.class),
                row.getObject("ready_on", LocalDate.class),
                row.getString("ready_after"),
                Arrays.stream((String[]) row.getArray("equipment").getArray())
                        .map(EquipmentKind::valueOf)
                        .collect(Collectors.toSet()),
                row.getLong("version"));
    }
}
