package org.plumbrow.cutover.after;

import java.sql.Types;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.cutover.daylog.DayStories;
import org.plumbrow.cutover.daylog.DayStory;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.web.Access;
import org.plumbrow.web.BranchCard;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The cutovers of today as they go, and one of them step by step. */
@Service
@Transactional(readOnly = true)
class LiveDays {

    private static final int MOST = 50;

    /** Of today, and of a night that is not over: a log that is still open a day after it was begun. */
    private static final String TODAY = """
            select w.id from outage_window w left join day_log l on l.window_id = w.id
             where w.branch_id = :branch and (:all or w.project_id in (:reach))
               and (w.day = :today and (l.id is not null or w.state in ('BOOKED', 'NOTICE_GIVEN', 'DONE'))
                    or w.state in ('BOOKED', 'NOTICE_GIVEN') and l.closed_at is null and l.opened_at > :since)
             order by w.start_time, w.id limit
            """ + MOST;
    /** The log under way, else the window of today, else what was last. */
    private static final String OF_PROJECT = """
            select w.id from outage_window w left join day_log l on l.window_id = w.id
             where w.project_id = :project and (l.id is not null or w.state in ('BOOKED', 'NOTICE_GIVEN'))
             order by (w.state in ('BOOKED', 'NOTICE_GIVEN') and w.day <= :today) desc, w.day desc, w.made_at desc limit 1
            """;

    private final Access access;
    private final ProjectAccess projectAccess;
    private final Projects projects;
    private final DayStories stories;
    private final JdbcClient jdbc;
    private final Clock clock;

    LiveDays(
            Access access,
            ProjectAccess projectAccess,
            Projects projects,
            DayStories stories,
            JdbcClient jdbc,
            Clock clock) {
        this.access = access;
        this.projectAccess = projectAccess;
        this.projects = projects;
        this.stories = stories;
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /**
     * @param now when this was read, by the server
     */
    record Today(List<DayStory> days, Instant now) {
        public long off() {
            return days.stream().filter(DayStory::isOffNow).count();
        }

        public @Nullable DayStory only() {
            return days.size() == 1 ? days.get(0) : null;
        }
    }

    Today today() {
        BranchCard branch = access.require(May.SEE_CUTOVERS);
        Optional<Set<UUID>> reach = projectAccess.reachOf(branch.id());
        Instant now = clock.instant();
        List<UUID> ids = jdbc.sql(TODAY)
                .param("branch", branch.id())
                .param("all", reach.isEmpty())
                .param("reach", reach.filter(known -> !known.isEmpty()).orElse(Set.of(branch.id())))
                .param("today", LocalDate.ofInstant(now, branch.zone()))
                .param("since", since(now), Types.TIMESTAMP_WITH_TIMEZONE)
                .query(UUID.class)
                .list();
        return new Today(stories.of(ids, branch.zone()), now);
    }

    private static OffsetDateTime since(Instant now) {
        return now.minus(1, ChronoUnit.DAYS).atOffset(ZoneOffset.UTC);
    }

    /**
     * @param story null while no outage is booked
     */
    record One(ProjectFacts project, @Nullable DayStory story, Instant now) {}

    One one(UUID projectId) {
        UUID branchId = projectAccess.require(projectId, May.SEE_CUTOVERS);
        ZoneId zone = zone(branchId);
        Optional<DayStory> story = jdbc.sql(OF_PROJECT)
                .param("project", projectId)
                .param("today", LocalDate.ofInstant(clock.instant(), zone))
                .query(UUID.class)
                .optional()
                .flatMap(id -> stories.of(id, zone));
        ProjectFacts project = story.map(DayStory::project).orElseGet(() -> projects.factsUnchecked(projectId));
        return new One(project, story.orElse(null), clock.instant());
    }

    private ZoneId zone(UUID branchId) {
        return access.visitor().branch(branchId).map(BranchCard::zone).orElseThrow(NotFound::new);
    }
}
