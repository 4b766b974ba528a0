package org.plumbrow.status.told;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import org.plumbrow.notice.NoticeKind;
import org.plumbrow.notice.NoticeNotSent;
import org.plumbrow.notice.OwnAddress;
import org.plumbrow.project.Journal;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.project.Projects;
import org.plumbrow.status.StaffLetters;
import org.plumbrow.web.Actor;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * A letter to customer or utility did not leave: whoever is in charge of the project hears of it, and the journal keeps
 * it. A letter to our own people that does not leave is told nobody: that letter would not leave either.
 */
@Component
class UndeliveredNotices {

    private final Projects projects;
    private final StaffLetters letters;
    private final Journal journal;
    private final OwnAddress own;
    private final Clock clock;

    UndeliveredNotices(Projects projects, StaffLetters letters, Journal journal, OwnAddress own, Clock clock) {
        this.projects = projects;
        this.letters = letters;
        this.journal = journal;
        this.own = own;
        this.clock = clock;
    }

    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    public void notSent(NoticeNotSent notice) {
        boolean outside = notice.kind() == NoticeKind.CUSTOMER || notice.kind() == NoticeKind.UTILITY;
        if (notice.projectId() == null || !outside) {
            return;
        }
        String whom = notice.kind() == NoticeKind.CUSTOMER ? "customer" : "utility";
        journal.append(
                JournalEvent.of(
                        notice.projectId(),
                        "status.notsent",
                        "A letter to the " + whom + " did not leave. The outbox says why.",
                        Map.of("notice", notice.noticeId().toString())),
                Actor.PLUMBROW,
                clock.instant());
        letters.toProjectManager(
                projects.factsUnchecked(notice.projectId()),
                "not-sent:" + notice.noticeId(),
                "Not sent to the " + whom + ": " + notice.subject(),
                List.of(
                        "This letter to the " + whom + " did not leave: " + notice.subject(),
                        notice.reason(),
                        "Tell them in another way, then say so at the letter:\n"
                                + own.of("/outbox/" + notice.noticeId())));
    }
}
