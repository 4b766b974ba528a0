package org.plumbrow.cutover.daylog;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.electrical.Service;
import org.plumbrow.calc.outage.OutageMinutes;
import org.plumbrow.cutover.CutoverWay;
import org.plumbrow.cutover.OutageFacts;
import org.plumbrow.cutover.OutageMinutesOfProject;
import org.plumbrow.cutover.Outages;
import org.plumbrow.cutover.StepsOfDay;
import org.plumbrow.database.Ids;
import org.plumbrow.project.Journal;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.web.Access;
import org.plumbrow.web.Refusal;
import org.springframework.transaction.annotation.Transactional;

/** Opens and closes the log of a day. Between the two: {@link LogSteps}, {@link LogHolds}, {@link LogChanges}, {@link LogReversal}. */
@org.springframework.stereotype.Service
@Transactional
public class DayLogBook {

    private final LogDoor door;
    private final Access access;
    private final Outages outages;
    private final OutageMinutesOfProject minutes;
    private final LogRows rows;
    private final LogPen pen;
    private final Journal journal;
    private final Clock clock;
    private final StepsOfDay steps;

    DayLogBook(
            LogDoor door,
            Access access,
            Outages outages,
            OutageMinutesOfProject minutes,
            LogRows rows,
            LogPen pen,
            Journal journal,
            Clock clock,
            StepsOfDay steps) {
        this.steps = steps;
        this.door = door;
        this.access = access;
        this.outages = outages;
        this.minutes = minutes;
        this.rows = rows;
        this.pen = pen;
        this.journal = journal;
        this.clock = clock;
    }

    /** Opens the log of the window that is to come, on its day or later. */
    public Optional<Refusal> open(UUID projectId, Service service, String personInCharge) {
        ProjectFacts project = door.require(projectId);
        Optional<OutageFacts> window =
                outages.live(projectId).filter(live -> live.state().isAnnounced());
        if (window.isEmpty()) {
            return Optional.of(Refusal.ofForm("No outage is booked here. Book a window first."));
        }
        Instant now = clock.instant();
        LocalDate today = LocalDate.ofInstant(now, pen.zone(window.get().branchId()));
        if (today.isBefore(window.get().day())) {
            return Optional.of(Refusal.ofForm(
                    "The log opens on the day of the outage. If the day has changed, move the window first."));
        }
        if (personInCharge.isBlank() || personInCharge.strip().length() > 120) {
            return Optional.of(new Refusal("personInCharge", "Write the name of the person in charge."));
        }
        CutoverWay way = steps.inForce(projectId).orElse(null);
        Optional<Refusal> other = againstService(way, service);
        if (other.isPresent()) {
            return other;
        }
        begin(project, way, window.get(), service, personInCharge.strip(), now);
        return Optional.empty();
    }

    /** What is drawn and what stands there must be one before anybody begins. */
    private static Optional<Refusal> againstService(@Nullable CutoverWay way, Service service) {
        return Optional.ofNullable(way)
                .filter(known ->
                        known.drawnService().isPresent() && known.drawnService().get() != service)
                .map(known -> new Refusal(
                        "service",
                        "Design revision " + known.revision() + " says "
                                + known.drawnService().get().words()
                                + ". If the site is otherwise, do not begin: have the design put right first."));
    }

    private void begin(
            ProjectFacts project,
            @Nullable CutoverWay way,
            OutageFacts window,
            Service service,
            String personInCharge,
            Instant now) {
        boolean generator = Procedure.hasGenerator(project, way);
        OutageMinutes planned = minutes.of(project, service.isThreePhase());
        DayLog log = new DayLog(
                Ids.next(),
                window.branchId(),
                project.id(),
                window.id(),
                service,
                generator,
                personInCharge,
                now,
                access.actor().name(),
                null,
                null,
                way == null ? null : way.revision());
        // Two people open it at once: one log, and the second of them simply sees it.
        if (rows.open(log, Procedure.of(way, generator, planned))) {
            if (way != null) {
                steps.make(window, way, access.actor().name(), now);
            }
            journal(log, "daylog.opened", "Day log opened.", now);
        }
    }

    /** Closes it: everything done, or reversed with the power back on and the reason written. */
    public Optional<Refusal> close(UUID projectId) {
        door.require(projectId);
        Optional<DayLog> known = rows.latest(projectId);
        if (known.isEmpty()) {
            return Optional.of(Refusal.ofForm("The day log is not open yet."));
        }
        DayLog log = rows.locked(known.get().id());
        if (log.isClosed()) {
            return Optional.empty();
        }
        LogState state = new LogState(rows.steps(log.id()), rows.entries(log.id()));
        boolean reversed = state.reversedAt().isPresent();
        Optional<Refusal> refusal = reversed ? againstClosingReversed(state) : againstClosing(state);
        if (refusal.isEmpty()) {
            close(log, state, reversed ? DayLog.Outcome.REVERSED : DayLog.Outcome.DONE);
        }
        return refusal;
    }

    private void close(DayLog log, LogState state, DayLog.Outcome outcome) {
        Instant now = clock.instant();
        rows.close(log.id(), outcome, now);
        if (outcome == DayLog.Outcome.REVERSED) {
            outages.reversed(log.windowId(), state.reverseReason().orElseThrow(), access.actor());
        }
        String sentence =
                "Day log closed. The power was off for " + state.outageMinutes().orElseThrow() + " min.";
        journal(log, "daylog.closed", sentence, now);
    }

    private void journal(DayLog log, String kind, String sentence, Instant now) {
        journal.append(
                JournalEvent.of(
                        log.projectId(), kind, sentence, Map.of("log", log.id().toString())),
                access.actor(),
                now);
    }

    private static Optional<Refusal> againstClosingReversed(LogState state) {
        if (state.powerOnAt().isEmpty()) {
            return Optional.of(Refusal.ofForm("Say first when the power was back on."));
        }
        return state.reverseReason().isEmpty()
                ? Optional.of(Refusal.ofForm("Write first why it was reversed."))
                : Optional.empty();
    }

    private static Optional<Refusal> againstClosing(LogState state) {
        return state.current()
                .map(step -> Refusal.ofForm(
                        step.title() + " is not done yet: " + step.words().toLowerCase(java.util.Locale.ROOT) + "."));
    }
}
