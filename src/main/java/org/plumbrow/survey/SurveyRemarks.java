package org.plumbrow.survey;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.database.Ids;
import org.plumbrow.project.Journal;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.web.Access;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Refusal;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What a designer asks about a part ("read leg B again"), open until somebody says that it is done. */
@Service
@Transactional
class SurveyRemarks {

    static final int LONGEST = 400;

    private final JdbcClient jdbc;
    private final ProjectAccess projectAccess;
    private final Access access;
    private final Journal journal;
    private final SurveyRows rows;

    SurveyRemarks(JdbcClient jdbc, ProjectAccess projectAccess, Access access, Journal journal, SurveyRows rows) {
        this.jdbc = jdbc;
        this.projectAccess = projectAccess;
        this.access = access;
        this.journal = journal;
        this.rows = rows;
    }

    record Remark(UUID id, SurveyPart part, String remark, Instant at, String byName) {
        Completeness.Lack lack() {
            return Completeness.Lack.of(part, byName + " asks: " + remark);
        }
    }

    List<Remark> open(UUID projectId) {
        return jdbc.sql("""
                select id, part, remark, at, by_name from survey_remark
                 where project_id = ? and settled_at is null order by at, id
                """)
                .param(projectId)
                .query((row, n) -> new Remark(
                        row.getObject("id", UUID.class),
                        SurveyPart.valueOf(row.getString("part")),
                        row.getString("remark"),
                        row.getObject("at", OffsetDateTime.class).toInstant(),
                        row.getString("by_name")))
                .list();
    }

    Optional<Refusal> add(UUID projectId, SurveyPart part, String typed) {
        UUID branchId = projectAccess.require(projectId, May.REMARK_ON_SURVEY);
        String remark = typed.replace("\r", "").strip();
        if (remark.isEmpty() || remark.length() > LONGEST) {
            return Optional.of(new Refusal("remark", "Write what should be read again, in at most 400 characters."));
        }
        Instant now = rows.now();
        jdbc.sql("""
                insert into survey_remark (id, branch_id, project_id, part, remark, at, by_name)
                values (?, ?, ?, ?, ?, ?, ?)
                """)
                .params(
                        Ids.next(),
                        branchId,
                        projectId,
                        part.name(),
                        remark,
                        SurveyRows.at(now),
                        access.actor().name())
                .update();
        journal.append(
                JournalEvent.of(projectId, "survey.asked", "Survey, %s: asked to look again.".formatted(part.words())),
                access.actor(),
                now);
        return Optional.empty();
    }

    /** @return the project of the remark */
    UUID settle(UUID remarkId) {
        UUID projectId = jdbc.sql("select project_id from survey_remark where id = ?")
                .param(remarkId)
                .query(UUID.class)
                .optional()
                .orElseThrow(NotFound::new);
        projectAccess.require(projectId, May.REMARK_ON_SURVEY);
        Instant now = rows.now();
        SurveyPart part = open(projectId).stream()
                .filter(remark -> remark.id.equals(remarkId))
                .findFirst()
                .map(Remark::part)
                .orElseThrow(NotFound::new);
        jdbc.sql("update survey_remark set settled_at = ?, settled_by = ? where id = ? and settled_at is null")
                .params(SurveyRows.at(now), access.actor().name(), remarkId)
                .update();
        journal.append(
                JournalEvent.of(
                        projectId, "survey.answered", "Survey, %s: a question is settled.".formatted(part.words())),
                access.actor(),
                now);
        return projectId;
    }
}
