package org.plumbrow.project.gate;

import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.plumbrow.database.Ids;
import org.plumbrow.project.Stage;
import org.plumbrow.web.Actor;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** Each time a gate was passed, with what was found at each item then. */
@Repository
class PassageRows {

    private static final TypeReference<List<Found>> FOUND = new TypeReference<>() {};

    private final JdbcClient jdbc;
    private final JsonMapper json;

    PassageRows(JdbcClient jdbc, JsonMapper json) {
        this.jdbc = jdbc;
        this.json = json;
    }

    /** How one item stood when the gate was passed. */
    record Found(String item, String words, ItemState state, String sentence) {}

    void add(GateView gate, LocalDate reachedOn, Actor by, Instant at) {
        List<Found> found = gate.items().stream()
                .map(item -> new Found(item.code(), item.asked().words(), item.state(), item.sentence()))
                .toList();
        jdbc.sql("""
                insert into gate_passage (id, branch_id, project_id, stage, reached_on, findings, at, by_person_id, by_name)
                values (:id, :branch, :project, :stage, :day, :findings, :at, cast(:person as uuid), :name)
                """)
                .param("id", Ids.next())
                .param("branch", gate.branchId())
                .param("project", gate.projectId())
                .param("stage", gate.to().name())
                .param("day", reachedOn)
                .param("findings", json.writeValueAsString(found))
                .param("at", AnswerRows.utc(at))
                .param("person", by.personId() == null ? null : by.personId().toString())
                .param("name", by.name())
                .update();
    }

    /** What was found when it was passed last, by item; empty for a stage that was reached before Plumbrow. */
    Map<String, Found> newest(UUID projectId, Stage stage) {
        Map<String, Found> found = new HashMap<>();
        jdbc.sql(
                        "select findings from gate_passage where project_id = ? and stage = ? order by at desc, id desc limit 1")
                .params(projectId, stage.name())
                .query(String.class)
                .optional()
                .map(text -> json.readValue(text, FOUND))
                .orElse(List.of())
                .forEach(item -> found.put(item.item(), item));
        return found;
    }
}
