package org.plumbrow.cutover;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.branch.UtilityFacts;
import org.plumbrow.cutover.OutageFacts.Told;
import org.plumbrow.cutover.OutageLetters.Occasion;
import org.plumbrow.notice.NewNotice;
import org.plumbrow.notice.NoticeLeft;
import org.plumbrow.notice.Outbox;
import org.plumbrow.project.Journal;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.web.Actor;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * Tells utility and customer, in the transaction of the change. A notice counts as given when it has left the house:
 * by mail, or because a person passed it on.
 */
@Component
class OutageNotices {

    private final OutageLetters letters;
    private final Outbox outbox;
    private final OutageWindows windows;
    private final Projects projects;
    private final BranchSettings settings;
    private final Journal journal;

    OutageNotices(
            OutageLetters letters,
            Outbox outbox,
            OutageWindows windows,
            Projects projects,
            BranchSettings settings,
            Journal journal) {
        this.letters = letters;
        this.outbox = outbox;
        this.windows = windows;
        this.projects = projects;
        this.settings = settings;
        this.journal = journal;
    }

    /** The two letters as they would be written now. */
    record Drafts(NewNotice utility, NewNotice customer) {}

    Drafts drafts(ProjectFacts project, @Nullable OutageFacts from, @Nullable OutageFacts window, String reason) {
        Optional<UtilityFacts> utility =
                Optional.ofNullable(project.site().utilityId()).flatMap(id -> settings.utility(project.branchId(), id));
        Occasion occasion =
                new Occasion(project, utility, projects.contactsUnchecked(project.id()), from, window, reason);
        return new Drafts(letters.toUtility(occasion), letters.toCustomer(occasion));
    }

    /** Writes both; what still waited about the window before is withdrawn: it never left. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void tell(ProjectFacts project, @Nullable OutageFacts from, @Nullable OutageFacts window, String reason) {
        boolean utilityKnew = from != null && from.utilityTold() != null;
        boolean customerKnew = from != null && from.customerTold() != null;
        if (from != null) {
            outbox.withdraw(OutageLetters.aboutUtility(from.id()));
            outbox.withdraw(OutageLetters.aboutCustomer(from.id()));
        }
        Drafts toUtility = drafts(project, utilityKnew ? from : null, window, reason);
        Drafts toCustomer = drafts(project, customerKnew ? from : null, window, reason);
        if (window != null || utilityKnew) {
            outbox.post(toUtility.utility());
        }
        if (window != null || customerKnew) {
            outbox.post(toCustomer.customer());
        }
    }

    /** A notice has left: from now on it counts. */
    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    public void left(NoticeLeft notice) {
        List<String> about = List.of(notice.about().split(":"));
        if (about.size() == 3 && about.get(0).equals("outage")) {
            windows.locked(UUID.fromString(about.get(1)))
                    .filter(window -> window.state().isAnnounced())
                    .ifPresent(window -> told(window, about.get(2).equals("utility"), notice));
        }
    }

    private void told(OutageWindow window, boolean utility, NoticeLeft notice) {
        Told told = new Told(notice.at(), notice.how());
        if (utility) {
            window.tellUtility(told);
        } else {
            window.tellCustomer(told);
        }
        windows.save(window);
        String whom = utility ? "the utility" : "the customer";
        journal.append(
                JournalEvent.of(
                        window.facts().projectId(),
                        "outage.told",
                        "Notice of the outage to " + whom + ": " + notice.how() + ".",
                        java.util.Map.of("window", window.id().toString())),
                Actor.PLUMBROW,
                notice.at());
    }
}
