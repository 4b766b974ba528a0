package org.plumbrow.cutover;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.calendar.ClockWords;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.database.Ids;
import org.plumbrow.project.Journal;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectChanged;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.plumbrow.web.Refusal;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Which window: hold it, book it and write the notices, move it, cancel it. One live window a project, held by the database. */
@Service
@Transactional
public class OutagePlanning {

    private static final int MOST_REASON = 300;

    private final ProjectAccess projectAccess;
    private final Access access;
    private final Projects projects;
    private final OutageWindows windows;
    private final WindowFinder finder;
    private final OutageNotices notices;
    private final PlannedDay planned;
    private final Journal journal;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    OutagePlanning(
            ProjectAccess projectAccess,
            Access access,
            Projects projects,
            OutageWindows windows,
            WindowFinder finder,
            OutageNotices notices,
            PlannedDay planned,
            Journal journal,
            ApplicationEventPublisher events,
            Clock clock) {
        this.projectAccess = projectAccess;
        this.access = access;
        this.projects = projects;
        this.windows = windows;
        this.finder = finder;
        this.notices = notices;
        this.planned = planned;
        this.journal = journal;
        this.events = events;
        this.clock = clock;
    }

    /** Holds a day without telling anybody outside. */
    public List<Refusal> hold(UUID projectId, OutageChoice choice) {
        return choose(projectId, choice, false);
    }

    /** Books a day and writes the notices to utility and customer. */
    public List<Refusal> book(UUID projectId, OutageChoice choice) {
        return choose(projectId, choice, true);
    }

    private List<Refusal> choose(UUID projectId, OutageChoice choice, boolean tell) {
        ProjectFacts project = mayBook(projectId);
        Optional<OutageFacts> live = windows.live(projectId).map(OutageWindow::facts);
        if (live.isPresent()) {
            return List.of(Refusal.ofForm(
                    "A window is set already: " + DayWords.of(live.get().day()) + ". Move that one, with a reason."));
        }
        List<Refusal> against = WindowRules.against(finder.asking(project), choice);
        if (against.isEmpty()) {
            begin(project, choice, tell);
        }
        return against;
    }

    private void begin(ProjectFacts project, OutageChoice choice, boolean tell) {
        OutageWindow window = OutageWindow.hold(
                Ids.next(),
                project.branchId(),
                project.id(),
                choice.plan(),
                access.actor().name(),
                clock.instant());
        if (tell) {
            window.book();
        }
        windows.saveAndFlush(window);
        OutageFacts facts = window.facts();
        if (tell) {
            notices.tell(project, null, facts, "");
            planned.isTold(project, facts, access.actor());
        }
        journal(
                facts,
                tell ? "outage.booked" : "outage.held",
                (tell ? "Outage booked: " : "Outage held: ") + when(facts) + ".",
                null);
        changed(project);
    }

    /** Books a day that was only held. */
    public void bookHeld(UUID projectId, long version) {
        ProjectFacts project = mayBook(projectId);
        OutageWindow window = current(projectId, version);
        if (window.state() == OutageState.PROPOSED) {
            window.book();
            windows.saveAndFlush(window);
            OutageFacts facts = window.facts();
            notices.tell(project, null, facts, "");
            planned.isTold(project, facts, access.actor());
            journal(facts, "outage.booked", "Outage booked: " + when(facts) + ".", null);
            changed(project);
        }
    }

    /** The old window ends, a new one begins; whoever knew of the old day is told old and new. */
    public List<Refusal> move(UUID projectId, long version, OutageChoice to, String reason) {
        ProjectFacts project = mayBook(projectId);
        OutageWindow window = current(projectId, version);
        if (isNoReason(reason)) {
            return List.of(new Refusal("reason", "Write why the outage moves, 1 to 300 characters."));
        }
        if (window.facts().powerOffAt() != null) {
            return List.of(
                    Refusal.ofForm("The power was switched off for this window. Reverse in the day log instead."));
        }
        List<Refusal> against = WindowRules.against(finder.asking(project), to);
        if (against.isEmpty()) {
            move(project, window, to, reason.strip());
        }
        return against;
    }

    private void move(ProjectFacts project, OutageWindow window, OutageChoice to, String reason) {
        OutageFacts from = window.facts();
        OutageWindow next =
                window.move(Ids.next(), to.plan(), reason, access.actor().name(), clock.instant());
        windows.saveAndFlush(window);
        if (from.state().isAnnounced()) {
            next.book();
        }
        windows.saveAndFlush(next);
        OutageFacts facts = next.facts();
        if (from.state().isAnnounced()) {
            notices.tell(project, from, facts, reason);
            planned.isTold(project, facts, access.actor());
        }
        journal(facts, "outage.moved", "Outage moved from " + when(from) + " to " + when(facts) + ". " + reason, from);
        changed(project);
    }

    /** @return what speaks against it; nothing when it is cancelled */
    public List<Refusal> cancel(UUID projectId, long version, String reason) {
        ProjectFacts project = mayBook(projectId);
        OutageWindow window = current(projectId, version);
        if (isNoReason(reason)) {
            return List.of(new Refusal("reason", "Write why the outage is cancelled, 1 to 300 characters."));
        }
        if (window.facts().powerOffAt() != null) {
            return List.of(Refusal.ofForm("The power was switched off for this window. The day log ends it."));
        }
        OutageFacts from = window.facts();
        window.cancel(reason.strip());
        windows.saveAndFlush(window);
        if (from.state().isAnnounced()) {
            notices.tell(project, from, null, reason.strip());
            planned.isNoLongerTold(project, access.actor());
        }
        journal(from, "outage.cancelled", "Outage of " + when(from) + " cancelled. " + reason.strip(), null);
        changed(project);
        return List.of();
    }

    private ProjectFacts mayBook(UUID projectId) {
        projectAccess.require(projectId, May.BOOK_OUTAGE);
        return projects.factsUnchecked(projectId);
    }

    /** @throws EditedMeanwhile if the window changed or ended since it was seen */
    private OutageWindow current(UUID projectId, long version) {
        OutageWindow window = windows.live(projectId).orElseThrow(() -> new EditedMeanwhile(version, -1));
        EditedMeanwhile.check(version, window.version());
        return window;
    }

    static boolean isNoReason(String reason) {
        return reason.isBlank() || reason.strip().length() > MOST_REASON;
    }

    static String when(OutageFacts window) {
        return DayWords.withYear(window.day()) + ", " + ClockWords.of(window.start()) + ", " + window.outageMinutes()
                + " min";
    }

    private void journal(OutageFacts window, String kind, String sentence, @Nullable OutageFacts from) {
        Map<String, String> facts = new java.util.HashMap<>(Map.of(
                "window", window.id().toString(),
                "day", window.day().toString(),
                "start", window.start().toString(),
                "minutes", Integer.toString(window.outageMinutes())));
        if (from != null) {
            facts.put("day.from", from.day().toString());
            facts.put("start.from", from.start().toString());
        }
        journal.append(JournalEvent.of(window.projectId(), kind, sentence, facts), access.actor(), clock.instant());
    }

    private void changed(ProjectFacts project) {
        events.publishEvent(new ProjectChanged(project.id(), project.branchId()));
    }
}
