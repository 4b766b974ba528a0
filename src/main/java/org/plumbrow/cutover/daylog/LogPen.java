package org.plumbrow.cutover.daylog;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.plumbrow.cutover.OutageFacts;
import org.plumbrow.cutover.Outages;
import org.plumbrow.project.Journal;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.project.SiteLoad;
import org.plumbrow.web.Access;
import org.plumbrow.web.BranchCard;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/**
 * Hands the pen of a log to one person at a time: reads what stands there under a lock, lets the rules speak, stores what
 * was added, and tells the window what the log now says of the power. Stored is answered only after the commit.
 */
@Component
public class LogPen {

    private static final int FORMAT = 1;

    private final ProjectAccess projectAccess;
    private final Access access;
    private final LogRows rows;
    private final Projects projects;
    private final Outages outages;
    private final Journal journal;
    private final Clock clock;

    LogPen(
            ProjectAccess projectAccess,
            Access access,
            LogRows rows,
            Projects projects,
            Outages outages,
            Journal journal,
            Clock clock) {
        this.projectAccess = projectAccess;
        this.access = access;
        this.rows = rows;
        this.projects = projects;
        this.outages = outages;
        this.journal = journal;
        this.clock = clock;
    }

    /** What the rules say to a change; nothing was stored when they refuse. */
    public record Said(List<Refusal> refusals, String sentence) {
        static Said refused(String field, String sentence) {
            return new Said(List.of(new Refusal(field, sentence)), "");
        }

        static Said refused(List<Refusal> refusals) {
            return new Said(refusals, "");
        }

        /** @param sentence what happened, for the journal and for the page */
        static Said stored(String sentence) {
            return new Said(List.of(), sentence);
        }

        public boolean isStored() {
            return refusals.isEmpty();
        }
    }

    /**
     * Writes into the newest log of the project.
     *
     * @param entryId made by the page: the same twice is stored once
     */
    @Transactional
    public Said write(UUID projectId, UUID entryId, Function<Writing, Said> change) {
        projectAccess.require(projectId, May.RUN_CUTOVER);
        DayLog known = rows.latest(projectId).orElseThrow(NotFound::new);
        DayLog log = rows.locked(known.id());
        if (rows.knows(entryId)) {
            return Said.stored("That was stored already.");
        }
        Writing writing = writing(log);
        Said said = change.apply(writing);
        if (writing.added().isEmpty()) {
            return said;
        }
        LogState then = withAdded(writing);
        Instant off = then.powerOffAt().orElse(null);
        Instant on = then.powerOnAt().orElse(null);
        if (off != null && on != null && on.isBefore(off)) {
            return Said.refused(
                    "at",
                    "The power would be back (" + writing.clock(on) + ") before it went off (" + writing.clock(off)
                            + ").");
        }
        store(writing, said);
        // Also after a correction: the window's minutes are always those of the log.
        outages.powerWas(log.windowId(), off, on, then.reversedAt().isEmpty() && off != null && on != null);
        return said;
    }

    private Writing writing(DayLog log) {
        OutageFacts window = outages.find(log.windowId()).orElseThrow(NotFound::new);
        return new Writing(
                log,
                new LogState(rows.steps(log.id()), rows.entries(log.id())),
                readings(log, projects.factsUnchecked(log.projectId())),
                access.actor(),
                new Writing.Moment(clock.instant(), window.day(), zone(log.branchId())),
                rows.nextNumber(log.id(), Writing.PAGE));
    }

    static Readings readings(DayLog log, ProjectFacts project) {
        return new Readings(log.service(), log.generator(), project.site().has(SiteLoad.DAIRY));
    }

    ZoneId zone(UUID branchId) {
        return access.visitor().branch(branchId).map(BranchCard::zone).orElseThrow(NotFound::new);
    }

    private void store(Writing writing, Said said) {
        DayLog log = writing.log();
        for (LogEntry entry : writing.added()) {
            rows.add(log, entry, writing.actor().personId(), FORMAT);
            Optional.ofNullable(entry.signature()).ifPresent(signature -> rows.addSignature(log, entry, signature));
        }
        if (!said.sentence().isEmpty()) {
            journal.append(
                    JournalEvent.of(
                            log.projectId(),
                            "daylog.written",
                            "Day log: " + said.sentence(),
                            Map.of("log", log.id().toString())),
                    writing.actor(),
                    writing.now());
        }
    }

    private static LogState withAdded(Writing writing) {
        List<LogEntry> all = new ArrayList<>();
        writing.state().steps().forEach(step -> all.addAll(writing.state().entriesOf(step.code())));
        all.addAll(writing.added());
        return new LogState(writing.state().steps(), all);
    }
}
