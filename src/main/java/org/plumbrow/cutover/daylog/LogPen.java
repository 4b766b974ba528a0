package org.plumbrow.cutover.daylog;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.plumbrow.calc.electrical.Service;
import org.plumbrow.cutover.OutageFacts;
import org.plumbrow.cutover.OutageState;
import org.plumbrow.cutover.Outages;
import org.plumbrow.project.Journal;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.SiteLoad;
import org.plumbrow.web.Access;
import org.plumbrow.web.BranchCard;
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

    private final LogDoor door;
    private final Access access;
    private final LogRows rows;
    private final Outages outages;
    private final Journal journal;
    private final Clock clock;
    private final PhoneTaps taps;

    LogPen(LogDoor door, Access access, LogRows rows, Outages outages, Journal journal, Clock clock, PhoneTaps taps) {
        this.door = door;
        this.access = access;
        this.rows = rows;
        this.outages = outages;
        this.journal = journal;
        this.clock = clock;
        this.taps = taps;
    }

    /**
     * What the rules say to a change.
     *
     * @param sentence what was stored, for the journal and for the page; empty when nothing was
     * @param meanwhile refused because somebody else wrote something since the page was opened
     */
    public record Said(List<Refusal> refusals, String sentence, boolean meanwhile) {
        static Said refused(String field, String sentence) {
            return new Said(List.of(new Refusal(field, sentence)), "", false);
        }

        /** Somebody else was faster. */
        static Said meanwhile(String field, String sentence) {
            return new Said(List.of(new Refusal(field, sentence)), "", true);
        }

        static Said refused(List<Refusal> refusals) {
            return new Said(refusals, "", false);
        }

        static Said stored(String sentence) {
            return new Said(List.of(), sentence, false);
        }

        /** As the beginning of a sentence. */
        static String begun(String sentence) {
            return sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
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
        ProjectFacts project = door.require(projectId);
        Optional<DayLog> known = rows.latest(projectId);
        if (known.isEmpty()) {
            return Said.refused("", "The day log is not open yet.");
        }
        DayLog log = rows.locked(known.get().id());
        if (rows.knows(entryId)) {
            return Said.stored("That was stored already.");
        }
        OutageFacts window = outages.find(log.windowId()).orElseThrow(NotFound::new);
        Writing writing = writing(log, project, window);
        if (isGivenUp(log, writing.state(), window)) {
            return Said.refused("", "This outage was moved or cancelled. Its log is not written any more.");
        }
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

    /** Given up before the power went off: there is nothing to tell of. After that the day is logged to its end. */
    static boolean isGivenUp(DayLog log, LogState state, OutageFacts window) {
        return !log.isClosed()
                && !window.isLive()
                && window.state() != OutageState.DONE
                && state.powerOffAt().isEmpty();
    }

    private Writing writing(DayLog log, ProjectFacts project, OutageFacts window) {
        Instant now = clock.instant();
        PhoneTap tap = taps.current();
        Instant happens = tap == null ? now : tap.happenedAt(now);
        return new Writing(
                log,
                new LogState(rows.steps(log.id()), rows.entries(log.id())),
                readings(log, project),
                access.actor(),
                new LogMoment(happens, window.day().atTime(window.start()), zone(log.branchId())),
                now,
                tap,
                rows.nextNumber(log.id(), Writing.PAGE));
    }

    static Readings readings(DayLog log, ProjectFacts project) {
        return readings(log.service(), log.generator(), project);
    }

    static Readings readings(Service service, boolean generator, ProjectFacts project) {
        return new Readings(service, generator, project.site().has(SiteLoad.DAIRY));
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
                    writing.storedAt());
        }
    }

    private static LogState withAdded(Writing writing) {
        List<LogEntry> all = new ArrayList<>();
        writing.state().steps().forEach(step -> all.addAll(writing.state().entriesOf(step.code())));
        all.addAll(writing.added());
        return new LogState(writing.state().steps(), all);
    }
}
