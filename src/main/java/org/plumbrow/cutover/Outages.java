package org.plumbrow.cutover;

import java.sql.Types;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.database.ReadOnce;
import org.plumbrow.project.Journal;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.project.ProjectChanged;
import org.plumbrow.web.Actor;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * The outage windows of a project, for rules, for the day log and for rooms behind this one. Callers have asked who may;
 * only the branch wall holds here.
 */
@Service
@Transactional
public class Outages {

    private static final String POWER = """
            update outage_window
               set power_off_at = cast(:off as timestamptz), power_on_at = cast(:on as timestamptz), version = version + 1,
                   state = case when :finished and state in ('PROPOSED', 'BOOKED', 'NOTICE_GIVEN') then 'DONE'
                                when not :finished and state = 'DONE' and utility_told_at is not null and customer_told_at is not null
                                then 'NOTICE_GIVEN'
                                when not :finished and state = 'DONE' then 'BOOKED'
                                else state end
             where id = :window and (power_off_at is distinct from cast(:off as timestamptz)
                                  or power_on_at is distinct from cast(:on as timestamptz))
            returning project_id, branch_id
            """;

    private final OutageWindows windows;
    private final JdbcClient jdbc;
    private final Journal journal;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    Outages(OutageWindows windows, JdbcClient jdbc, Journal journal, ApplicationEventPublisher events, Clock clock) {
        this.windows = windows;
        this.jdbc = jdbc;
        this.journal = journal;
        this.events = events;
        this.clock = clock;
    }

    /** The window that is still to come. */
    @Transactional(readOnly = true)
    public Optional<OutageFacts> live(UUID projectId) {
        return windows.live(projectId).map(OutageWindow::facts);
    }

    @Transactional(readOnly = true)
    public List<OutageFacts> live(Collection<UUID> projectIds) {
        return windows.liveOf(projectIds).stream().map(OutageWindow::facts).toList();
    }

    /** The live window, else the newest that is done: what a gate looks at. */
    @Transactional(readOnly = true)
    public Optional<OutageFacts> liveOrDone(UUID projectId) {
        List<OutageFacts> all = ofProject(projectId);
        return all.stream()
                .filter(OutageFacts::isLive)
                .findFirst()
                .or(() -> all.stream()
                        .filter(window -> window.state() == OutageState.DONE)
                        .findFirst());
    }

    /** The windows of these days that were announced and are still to come, of all branches within the scope. */
    @Transactional(readOnly = true)
    public List<OutageFacts> announced(LocalDate first, LocalDate last) {
        return windows.announced(first, last).stream().map(OutageWindow::facts).toList();
    }

    /** All windows, newest first. */
    @Transactional(readOnly = true)
    public List<OutageFacts> ofProject(UUID projectId) {
        return ReadOnce.of(
                new WindowsOf(projectId),
                () -> windows.ofProject(projectId).stream()
                        .map(OutageWindow::facts)
                        .toList());
    }

    private record WindowsOf(UUID projectId) {}

    @Transactional(readOnly = true)
    public Optional<OutageFacts> find(UUID windowId) {
        return windows.findById(windowId).map(OutageWindow::facts);
    }

    /** As {@link #find(UUID)} for several at once; ids that are not there are left out. */
    @Transactional(readOnly = true)
    public List<OutageFacts> find(Collection<UUID> windowIds) {
        return windows.findByIdIn(windowIds).stream().map(OutageWindow::facts).toList();
    }

    /**
     * What the day log says of the power. Written beside the aggregate, so that a tap on the phone never waits for, nor
     * is refused by, somebody who edits the window; its version grows, so that they see it.
     *
     * @param finished the work is in and the customer has signed that it runs
     */
    public void powerWas(UUID windowId, @Nullable Instant off, @Nullable Instant on, boolean finished) {
        jdbc.sql(POWER)
                .param("window", windowId)
                .param("off", off == null ? null : off.atOffset(ZoneOffset.UTC), Types.TIMESTAMP_WITH_TIMEZONE)
                .param("on", on == null ? null : on.atOffset(ZoneOffset.UTC), Types.TIMESTAMP_WITH_TIMEZONE)
                .param("finished", finished)
                .query((row, n) -> new ProjectChanged(
                        row.getObject("project_id", UUID.class), row.getObject("branch_id", UUID.class)))
                .optional()
                .ifPresent(events::publishEvent);
    }

    /** The day ended with everything as it was before: this window is over, another day is to be found. */
    public void reversed(UUID windowId, String reason, Actor by) {
        OutageWindow window = windows.locked(windowId).orElseThrow();
        window.cancel("Reversed on the day: " + reason);
        windows.save(window);
        OutageFacts facts = window.facts();
        journal.append(
                JournalEvent.of(
                        facts.projectId(),
                        "outage.reversed",
                        "The cutover was reversed on the day. " + reason,
                        Map.of("window", windowId.toString())),
                by,
                clock.instant());
        events.publishEvent(new ProjectChanged(facts.projectId(), facts.branchId()));
    }

    /**
     * What the customer says to the day.
     *
     * @param through who wrote it down: "the customer's page", "by telephone"
     * @return false when there is no window to answer to
     */
    public boolean customerAnswers(UUID projectId, boolean agrees, String note, String through, Actor by) {
        Optional<OutageWindow> live = windows.live(projectId).filter(window -> window.state() != OutageState.PROPOSED);
        live.ifPresent(window -> {
            Instant now = clock.instant();
            window.customerAnswers(agrees, note.strip(), through, now);
            windows.save(window);
            // The customer's own words stand in the window's row: a journal line is never forgotten, a person may be.
            journal.append(
                    JournalEvent.of(
                            projectId,
                            "outage.answered",
                            agrees
                                    ? "The customer agrees to the day of the outage."
                                    : "The day of the outage does not work for the customer.",
                            Map.of("window", window.id().toString(), "through", through)),
                    by,
                    now);
        });
        return live.isPresent();
    }
}
