package org.plumbrow.schedule.tell;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.notice.NewNotice;
import org.plumbrow.notice.Outbox;
import org.plumbrow.project.Journal;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.schedule.plan.ToTell;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Tells those whom the published plan concerns: a notice each, or a person's word that it was said. */
@Service
@Transactional
class TellSending {

    private final TellReading reading;
    private final TellLetters letters;
    private final ToldRows rows;
    private final Outbox outbox;
    private final Journal journal;
    private final Access access;
    private final Clock clock;

    TellSending(
            TellReading reading,
            TellLetters letters,
            ToldRows rows,
            Outbox outbox,
            Journal journal,
            Access access,
            Clock clock) {
        this.reading = reading;
        this.letters = letters;
        this.rows = rows;
        this.outbox = outbox;
        this.journal = journal;
        this.access = access;
        this.clock = clock;
    }

    /** A notice to everybody who is left and can be written to from here. @return how many */
    int tellAll(UUID planId) {
        TellView view = current(planId);
        List<ToTell> left = view.lines().stream()
                .filter(line -> line.told().isEmpty() && line.who().whom() != ToTell.Whom.UTILITY)
                .map(TellView.Line::who)
                .toList();
        left.forEach(who -> tell(view, who, true));
        return left.size();
    }

    /** @param byNotice else a person has told them */
    ToTell tellOne(UUID planId, String whom, UUID id, boolean byNotice) {
        TellView view = current(planId);
        ToTell who = view.lines().stream()
                .map(TellView.Line::who)
                .filter(one -> one.whom().name().equals(whom) && one.id().equals(id))
                .findFirst()
                .orElseThrow(NotFound::new);
        tell(view, who, byNotice && who.whom() != ToTell.Whom.UTILITY);
        return who;
    }

    private TellView current(UUID planId) {
        access.require(May.PUBLISH_PLAN);
        Optional<TellView> view = reading.view();
        return view.filter(one -> one.plan().id().equals(planId)).orElseThrow(() -> new EditedMeanwhile(0, 1));
    }

    private void tell(TellView view, ToTell who, boolean byNotice) {
        String by = access.actor().name();
        if (!rows.add(view.plan(), ToldRows.Key.of(who), byNotice ? "NOTICE" : "SPOKEN", by, clock.instant())) {
            return;
        }
        if (byNotice) {
            NewNotice notice = letters.of(view.plan(), who);
            outbox.post(notice);
        }
        if (who.whom() == ToTell.Whom.CUSTOMER) {
            journal.append(
                    JournalEvent.of(
                            who.id(),
                            "plan.told",
                            "The customer is told of plan %d%s: %s."
                                    .formatted(
                                            view.plan().number(),
                                            byNotice ? " by a notice in the outbox" : "",
                                            String.join("; ", who.lines())),
                            java.util.Map.of(
                                    "plan", Integer.toString(view.plan().number()))),
                    access.actor(),
                    clock.instant());
        }
    }
}
