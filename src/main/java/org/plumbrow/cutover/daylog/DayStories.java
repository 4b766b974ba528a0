package org.plumbrow.cutover.daylog;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.plumbrow.cutover.OutageFacts;
import org.plumbrow.cutover.Outages;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Tells what the logs of some days say, of several in as many queries as of one. Callers have asked who may. */
@Service
@Transactional(readOnly = true)
public class DayStories {

    private static final String STEPS =
            "select s.* from day_log_step s where s.day_log_id in (:ids) order by s.day_log_id, s.position";
    private static final String ENTRIES = """
            select e.*, s.part, s.name, s.trade
              from day_log_entry e left join day_log_signature s on s.entry_id = e.id
             where e.day_log_id in (:ids) order by e.stored_at, e.device, e.number
            """;

    private final Outages outages;
    private final Projects projects;
    private final JdbcClient jdbc;
    private final Clock clock;

    DayStories(Outages outages, Projects projects, JdbcClient jdbc, Clock clock) {
        this.outages = outages;
        this.projects = projects;
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** @param zone in which the windows' hours are meant */
    public Optional<DayStory> of(UUID windowId, ZoneId zone) {
        return of(List.of(windowId), zone).stream().findFirst();
    }

    /** In the order asked for; windows that are not there are left out. */
    public List<DayStory> of(Collection<UUID> windowIds, ZoneId zone) {
        if (windowIds.isEmpty()) {
            return List.of();
        }
        Map<UUID, OutageFacts> windows = byId(outages.find(windowIds), OutageFacts::id);
        Map<UUID, ProjectFacts> known = byId(
                projects.factsUnchecked(
                        windows.values().stream().map(OutageFacts::projectId).collect(Collectors.toSet())),
                ProjectFacts::id);
        Map<UUID, DayLog> logs = byId(
                jdbc.sql("select * from day_log where window_id in (:ids)")
                        .param("ids", windowIds)
                        .query(LogRows::log)
                        .list(),
                DayLog::windowId);
        Collection<UUID> ids = logs.values().stream().map(DayLog::id).toList();
        Map<UUID, List<LogStep>> steps = grouped(STEPS, ids, LogRows::step);
        Map<UUID, List<LogEntry>> entries = grouped(ENTRIES, ids, LogRows::entry);
        return windowIds.stream()
                .filter(windows::containsKey)
                .map(windows::get)
                .map(window -> {
                    ProjectFacts project = known.get(window.projectId());
                    DayLog log = logs.get(window.id());
                    StoryTelling.Day day = new StoryTelling.Day(project, window, zone, clock.instant());
                    return log == null
                            ? StoryTelling.unopened(day)
                            : new StoryTelling(
                                            day,
                                            log,
                                            new LogState(
                                                    steps.getOrDefault(log.id(), List.of()),
                                                    entries.getOrDefault(log.id(), List.of())))
                                    .story();
                })
                .toList();
    }

    /** Reads one row. */
    private interface Mapped<T> {
        T of(ResultSet row, int number) throws SQLException;
    }

    private <T> Map<UUID, List<T>> grouped(String sql, Collection<UUID> logs, Mapped<T> mapped) {
        Map<UUID, List<T>> grouped = new HashMap<>();
        if (!logs.isEmpty()) {
            jdbc.sql(sql)
                    .param("ids", logs)
                    .query((row, n) -> grouped.computeIfAbsent(
                                    row.getObject("day_log_id", UUID.class), log -> new ArrayList<>())
                            .add(mapped.of(row, n)))
                    .list();
        }
        return grouped;
    }

    private static <T> Map<UUID, T> byId(Collection<T> all, Function<T, UUID> id) {
        return all.stream().collect(Collectors.toMap(id, Function.identity()));
    }
}
