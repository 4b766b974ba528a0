package org.plumbrow.cutover;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.BiConsumer;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.duration.EquipmentKind;
import org.plumbrow.cutover.OutageFacts.Told;
import org.plumbrow.notice.Outbox;
import org.plumbrow.project.Journal;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectChanged;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Refusal;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What people bring home about a booked outage: told how, confirmed with which number, agreed by whom; blackouts; the work. */
@Service
@Transactional
public class OutageRecords {

    private static final int MOST_HOW = 120;
    private static final int MOST_NUMBER = 60;
    private static final int MOST_REASON = 200;

    private final ProjectAccess projectAccess;
    private final Access access;
    private final OutageWindows windows;
    private final Outages outages;
    private final Blackouts blackouts;
    private final OutageWorkRows works;
    private final MachineCalendar machines;
    private final Outbox outbox;
    private final Journal journal;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    OutageRecords(
            ProjectAccess projectAccess,
            Access access,
            OutageWindows windows,
            Outages outages,
            Blackouts blackouts,
            OutageWorkRows works,
            MachineCalendar machines,
            Outbox outbox,
            Journal journal,
            ApplicationEventPublisher events,
            Clock clock) {
        this.projectAccess = projectAccess;
        this.access = access;
        this.windows = windows;
        this.outages = outages;
        this.blackouts = blackouts;
        this.works = works;
        this.machines = machines;
        this.outbox = outbox;
        this.journal = journal;
        this.events = events;
        this.clock = clock;
    }

    /** The utility was told outside the outbox: by its portal, by letter. */
    public Optional<Refusal> utilityTold(UUID projectId, LocalDate on, String how) {
        return told(projectId, on, how, OutageWindow::tellUtility, true);
    }

    /** The customer was told outside the outbox: by telephone, in person. */
    public Optional<Refusal> customerTold(UUID projectId, LocalDate on, String how) {
        return told(projectId, on, how, OutageWindow::tellCustomer, false);
    }

    private Optional<Refusal> told(
            UUID projectId, LocalDate on, String how, BiConsumer<OutageWindow, Told> tell, boolean utility) {
        OutageWindow window = announced(projectId);
        Instant now = clock.instant();
        if (how.isBlank() || how.strip().length() > MOST_HOW) {
            return Optional.of(new Refusal("how", "Write how, for example: through the portal, by telephone."));
        }
        var zone = access.visitor()
                .branch(window.facts().branchId())
                .orElseThrow(NotFound::new)
                .zone();
        LocalDate today = LocalDate.ofInstant(now, zone);
        if (on.isAfter(today)) {
            return Optional.of(new Refusal("toldOn", "That day is still to come. Write the day on which it left."));
        }
        if (on.isBefore(today.minusYears(1))) {
            return Optional.of(new Refusal("toldOn", "That day is more than a year ago. Look at the year."));
        }
        Instant at = on.equals(today) ? now : on.atTime(12, 0).atZone(zone).toInstant();
        tell.accept(window, new Told(at, how.strip()));
        windows.saveAndFlush(window);
        outbox.withdraw(utility ? OutageLetters.aboutUtility(window.id()) : OutageLetters.aboutCustomer(window.id()));
        journal(
                window,
                "outage.told",
                "Notice of the outage to " + (utility ? "the utility" : "the customer") + ": " + how.strip() + ", "
                        + DayWords.withYear(on)
                        + ".");
        return Optional.empty();
    }

    public Optional<Refusal> utilityConfirms(UUID projectId, String number) {
        OutageWindow window = announced(projectId);
        if (number.isBlank() || number.strip().length() > MOST_NUMBER) {
            return Optional.of(
                    new Refusal("number", "Write the utility's number for the appointment, at most 60 characters."));
        }
        window.utilityConfirms(number.strip(), clock.instant());
        windows.saveAndFlush(window);
        journal(window, "outage.confirmed", "The utility confirmed the outage, number " + number.strip() + ".");
        changed(window);
        return Optional.empty();
    }

    public Optional<Refusal> customerAnswers(UUID projectId, boolean agrees, String note) {
        projectAccess.require(projectId, May.BOOK_OUTAGE);
        if (note.length() > MOST_REASON) {
            return Optional.of(new Refusal("note", "200 characters fit; " + note.length() + " are written."));
        }
        boolean answered =
                outages.customerAnswers(projectId, agrees, note, access.actor().name(), access.actor());
        return answered ? Optional.empty() : Optional.of(Refusal.ofForm("No outage is booked here."));
    }

    /** When the customer must have power. */
    Optional<Refusal> addBlackout(UUID projectId, Blackouts.Row blackout) {
        UUID branchId = projectAccess.require(projectId, May.BOOK_OUTAGE);
        Optional<Refusal> refusal = against(blackout);
        if (refusal.isEmpty()) {
            UUID id = blackouts.add(branchId, projectId, blackout, clock.instant());
            journal(
                    projectId,
                    "outage.blackout",
                    "Added when the customer needs the power: " + blackout.reason() + ".",
                    Map.of("blackout", id.toString()));
        }
        return refusal;
    }

    private static Optional<Refusal> against(Blackouts.Row blackout) {
        if ((blackout.first() == null) != (blackout.last() == null)) {
            return Optional.of(new Refusal("first", "Write first and last day, or neither."));
        }
        if (blackout.first() != null
                && blackout.last() != null
                && blackout.last().isBefore(blackout.first())) {
            return Optional.of(new Refusal("last", "The last day lies before the first."));
        }
        if ((blackout.from() == null) != (blackout.to() == null)) {
            return Optional.of(new Refusal("from", "Write both times, or neither for the whole day."));
        }
        if (blackout.from() != null && blackout.to() != null && !blackout.from().isBefore(blackout.to())) {
            return Optional.of(new Refusal("to", "The end lies before the start."));
        }
        if (blackout.first() == null && blackout.from() == null) {
            return Optional.of(
                    new Refusal("first", "Write days, times or both: all days of every week cannot be kept free."));
        }
        return blackout.reason().isBlank() || blackout.reason().length() > MOST_REASON
                ? Optional.of(new Refusal("reason", "Write what needs the power, 1 to 200 characters."))
                : Optional.empty();
    }

    void endBlackout(UUID projectId, UUID blackoutId) {
        projectAccess.require(projectId, May.BOOK_OUTAGE);
        if (blackouts.end(projectId, blackoutId, access.actor().name(), clock.instant())) {
            journal(
                    projectId,
                    "outage.blackout",
                    "A time when the customer needs the power was taken out.",
                    Map.of("blackout", blackoutId.toString()));
        }
    }

    void restoreBlackout(UUID projectId, UUID blackoutId) {
        projectAccess.require(projectId, May.BOOK_OUTAGE);
        if (blackouts.restore(projectId, blackoutId)) {
            journal(
                    projectId,
                    "outage.blackout",
                    "A time when the customer needs the power was put back.",
                    Map.of("blackout", blackoutId.toString()));
        }
    }

    WorkContent work(UUID projectId) {
        projectAccess.require(projectId, May.BOOK_OUTAGE);
        return works.of(projectId);
    }

    /** Kinds of shared equipment that the work can ask for: those the branch has, and those it asked for before. */
    Set<EquipmentKind> machineKinds(UUID projectId, LocalDate today) {
        UUID branchId = projectAccess.require(projectId, May.BOOK_OUTAGE);
        Set<EquipmentKind> kinds = EnumSet.noneOf(EquipmentKind.class);
        kinds.addAll(machines.shared(branchId, today));
        kinds.addAll(works.of(projectId).equipment());
        return kinds;
    }

    /** @throws EditedMeanwhile if somebody saved it since it was seen */
    void writeWork(UUID projectId, WorkContent content) {
        UUID branchId = projectAccess.require(projectId, May.BOOK_OUTAGE);
        if (!works.save(projectId, branchId, content)) {
            throw new EditedMeanwhile(content.version(), works.of(projectId).version());
        }
        journal(projectId, "outage.work", "What is done while the power is off was changed.", Map.of());
        events.publishEvent(new ProjectChanged(projectId, branchId));
    }

    private OutageWindow announced(UUID projectId) {
        projectAccess.require(projectId, May.BOOK_OUTAGE);
        return windows.live(projectId)
                .filter(window -> window.state().isAnnounced())
                .orElseThrow(() -> new EditedMeanwhile(0, -1));
    }

    private void journal(OutageWindow window, String kind, String sentence) {
        journal(
                window.facts().projectId(),
                kind,
                sentence,
                Map.of("window", window.id().toString()));
    }

    private void journal(UUID projectId, String kind, String sentence, Map<String, String> facts) {
        journal.append(JournalEvent.of(projectId, kind, sentence, facts), access.actor(), clock.instant());
    }

    private void changed(OutageWindow window) {
        OutageFacts facts = window.facts();
        events.publishEvent(new ProjectChanged(facts.projectId(), facts.branchId()));
    }

    /** The blackouts that hold, for the page. */
    @Transactional(readOnly = true)
    List<Blackouts.Row> blackouts(UUID projectId) {
        return blackouts.of(projectId);
    }
}
