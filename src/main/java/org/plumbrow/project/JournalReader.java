package org.plumbrow.project;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.plumbrow.web.May;
import org.plumbrow.web.Paging;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** Reads a project's journal. */
@Service
@Transactional(readOnly = true)
public class JournalReader {

    private static final TypeReference<Map<String, String>> FACTS = new TypeReference<>() {};
    /** An export holds so many lines in memory, however long the journal is. */
    private static final int AT_A_TIME = 200;

    private static final String LINES = """
            select project_id, number, kind, sentence, facts, at, by_person_id, by_name
              from project_journal where project_id = :project\s""";

    private final ProjectAccess access;
    private final JdbcClient jdbc;
    private final JsonMapper json;

    JournalReader(ProjectAccess access, JdbcClient jdbc, JsonMapper json) {
        this.access = access;
        this.jdbc = jdbc;
        this.json = json;
    }

    /** A page of lines, newest first. */
    public record Page(List<JournalLine> lines, Paging paging) {}

    public Page page(UUID projectId, int asked) {
        access.require(projectId, May.SEE_JOURNAL);
        long total = jdbc.sql("select lines from project_journal_head where project_id = ?")
                .param(projectId)
                .query(Long.class)
                .single();
        Paging paging = Paging.of(asked, total);
        return new Page(newest(projectId, paging.size(), paging.offset()), paging);
    }

    /** The newest lines; none for somebody who may not see the journal. */
    public List<JournalLine> newest(UUID projectId, int most) {
        UUID branchId = access.require(projectId, May.SEE_PROJECTS);
        return access.may(branchId, May.SEE_JOURNAL) ? newest(projectId, most, 0) : List.of();
    }

    /** As {@link #newest(UUID, int)} for a caller who has read the facts already. */
    public List<JournalLine> newest(ProjectFacts project, int most) {
        access.require(project.id(), project.branchId(), May.SEE_PROJECTS);
        return access.may(project.branchId(), May.SEE_JOURNAL) ? newest(project.id(), most, 0) : List.of();
    }

    public Optional<JournalLine> line(UUID projectId, int number) {
        access.require(projectId, May.SEE_JOURNAL);
        return jdbc.sql(LINES + "and number = :number")
                .param("project", projectId)
                .param("number", number)
                .query(this::line)
                .optional();
    }

    /** Every line, oldest first, one after the other. */
    public void each(UUID projectId, Consumer<JournalLine> to) {
        access.require(projectId, May.EXPORT);
        try (Stream<JournalLine> lines = jdbc
                .sql(LINES + "order by number")
                .withFetchSize(AT_A_TIME)
                .param("project", projectId)
                .query(this::line)
                .stream()) {
            lines.forEach(to);
        }
    }

    private List<JournalLine> newest(UUID projectId, int size, long offset) {
        return jdbc.sql(LINES + "order by number desc limit :size offset :offset")
                .param("project", projectId)
                .param("size", size)
                .param("offset", offset)
                .query(this::line)
                .list();
    }

    private JournalLine line(ResultSet row, int n) throws SQLException {
        return new JournalLine(
                row.getObject("project_id", UUID.class),
                row.getInt("number"),
                row.getString("kind"),
                row.getString("sentence"),
                json.readValue(row.getString("facts"), FACTS),
                row.getObject("at", OffsetDateTime.class).toInstant(),
                row.getObject("by_person_id", UUID.class),
                row.getString("by_name"));
    }
}
