package org.plumbrow.cutover.after;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.sql.Types;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.plumbrow.cutover.OutageFacts;
import org.plumbrow.cutover.Outages;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectFacts.Site;
import org.plumbrow.project.Projects;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Refusal;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What people take along from a day, and what earlier days of the same kind left for the next one. */
@Service
@Transactional
public class Lessons {

    static final int LONGEST = 500;

    private static final int SHOWN = 6;
    private static final String ROWS = """
            select l.*, w.day, w.project_id, p.number, p.name
              from day_lesson l join outage_window w on w.id = l.window_id join project p on p.id = w.project_id
            """;

    private final ProjectAccess projectAccess;
    private final Access access;
    private final Projects projects;
    private final Outages outages;
    private final JdbcClient jdbc;
    private final Clock clock;

    Lessons(
            ProjectAccess projectAccess,
            Access access,
            Projects projects,
            Outages outages,
            JdbcClient jdbc,
            Clock clock) {
        this.projectAccess = projectAccess;
        this.access = access;
        this.projects = projects;
        this.outages = outages;
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** What one person wrote of one day. */
    public record Lesson(
            UUID personId,
            String project,
            LocalDate day,
            String wentWell,
            String nextTime,
            String by,
            Instant at,
            long version) {}

    /** The lessons of one day. */
    record Page(ProjectFacts project, OutageFacts window, List<Lesson> all, Optional<Lesson> own) {}

    @Transactional(readOnly = true)
    Page page(UUID projectId, UUID windowId) {
        projectAccess.require(projectId, May.RUN_CUTOVER);
        OutageFacts window = outages.find(windowId)
                .filter(one -> one.projectId().equals(projectId))
                .orElseThrow(NotFound::new);
        List<Lesson> all = jdbc.sql(ROWS + " where l.window_id = ? order by l.written_at")
                .param(windowId)
                .query(Lessons::lesson)
                .list();
        UUID me = access.visitor().personId();
        return new Page(
                projects.facts(projectId),
                window,
                all,
                all.stream().filter(one -> one.personId().equals(me)).findFirst());
    }

    /** @param version -1 for what was not written yet */
    Optional<Refusal> write(UUID projectId, UUID windowId, String wentWell, String nextTime, long version) {
        Page page = page(projectId, windowId);
        if (page.window.powerOffAt() == null) {
            return Optional.of(new Refusal("", "That day has not been yet. Write down what you learned after it."));
        }
        if (wentWell.isEmpty() && nextTime.isEmpty()) {
            return Optional.of(new Refusal("nextTime", "Write at least one of the two."));
        }
        Site site = page.project.site();
        int rows = jdbc.sql("""
                insert into day_lesson as d (window_id, person_id, branch_id, utility_id, tap, site_kind, went_well, next_time,
                                             written_by, written_at)
                select :window, :person, :branch, :utility, :tap, :kind, :well, :next, :by, :at
                 where :version = -1 or exists (select 1 from day_lesson where window_id = :window and person_id = :person)
                on conflict (window_id, person_id) do update
                   set went_well = :well, next_time = :next, written_by = :by, written_at = :at, version = d.version + 1
                 where d.version = :version
                """)
                .param("window", windowId)
                .param("person", access.visitor().personId())
                .param("branch", page.project.branchId())
                .param("utility", site.utilityId(), Types.OTHER)
                .param("tap", site.supplySideTap())
                .param("kind", kind(site))
                .param("well", wentWell)
                .param("next", nextTime)
                .param("by", access.visitor().name())
                .param("at", Timestamp.from(clock.instant()))
                .param("version", version)
                .update();
        if (rows == 0) {
            throw new EditedMeanwhile(version, page.own.map(Lesson::version).orElse(-1L));
        }
        return Optional.empty();
    }

    /** What is on the site, as far as days are alike by it. */
    private static String kind(Site site) {
        return site.loads().stream().map(Enum::name).sorted().collect(Collectors.joining(" "));
    }

    /** For a page about the next day of a project: what days with the same utility, connection and kind of site left. */
    @Transactional(readOnly = true)
    public List<Lesson> forNext(UUID projectId) {
        projectAccess.require(projectId, May.SEE_CUTOVERS);
        ProjectFacts project = projects.factsUnchecked(projectId);
        return jdbc.sql(ROWS + """
                 where l.branch_id = :branch and l.utility_id is not distinct from cast(:utility as uuid) and l.tap = :tap
                   and l.site_kind = :kind order by l.written_at desc, l.person_id limit
                """ + SHOWN)
                .param("branch", project.branchId())
                .param("utility", project.site().utilityId(), Types.OTHER)
                .param("tap", project.site().supplySideTap())
                .param("kind", kind(project.site()))
                .query(Lessons::lesson)
                .list();
    }

    private static Lesson lesson(ResultSet row, int number) throws SQLException {
        return new Lesson(
                row.getObject("person_id", UUID.class),
                row.getString("number") + " " + row.getString("name"),
                row.getObject("day", LocalDate.class),
                row.getString("went_well"),
                row.getString("next_time"),
                row.getString("written_by"),
                row.getTimestamp("written_at").toInstant(),
                row.getLong("version"));
    }
}
