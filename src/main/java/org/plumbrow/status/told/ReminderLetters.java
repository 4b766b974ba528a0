package org.plumbrow.status.told;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.plumbrow.notice.NewNotice;
import org.plumbrow.notice.NoticeKind;
import org.plumbrow.notice.Outbox;
import org.plumbrow.notice.OwnAddress;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.project.ProjectContact;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.status.page.CustomerPage;
import org.plumbrow.status.page.CustomerView;
import org.plumbrow.web.link.LinkKind;
import org.plumbrow.web.link.PrivateLinks;
import org.springframework.context.MessageSource;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** The reminder of an outage: the same words as on the customer's page, so that both never differ. */
@Component
class ReminderLetters {

    private static final int SHORT_MOST = 160;
    private static final Set<String> OVER = Set.of("outage.moved", "outage.cancelled", "outage.reversed");

    private final CustomerPage page;
    private final Projects projects;
    private final PrivateLinks links;
    private final OwnAddress own;
    private final Outbox outbox;
    private final MessageSource texts;

    ReminderLetters(
            CustomerPage page,
            Projects projects,
            PrivateLinks links,
            OwnAddress own,
            Outbox outbox,
            MessageSource texts) {
        this.page = page;
        this.projects = projects;
        this.links = links;
        this.own = own;
        this.outbox = outbox;
        this.texts = texts;
    }

    /** A project has one outage to come at a time. */
    static String about(UUID projectId) {
        return "outage-reminder:" + projectId;
    }

    /** Empty when the page tells of no outage to come: on hold, called off. */
    Optional<NewNotice> of(UUID projectId) {
        CustomerView view = page.of(projectId);
        if (view.asked() == null) {
            return Optional.empty();
        }
        ProjectFacts project = projects.factsUnchecked(projectId);
        Optional<ProjectContact> who =
                projects.contactsUnchecked(projectId).stream().findFirst();
        NewNotice.Recipient to = who.map(contact -> new NewNotice.Recipient(contact.name(), contact.email()))
                .orElse(new NewNotice.Recipient(project.customer(), ""));
        NewNotice letter = NewNotice.ofProject(
                        NoticeKind.CUSTOMER,
                        project.branchId(),
                        projectId,
                        to,
                        view.headline().replaceAll("\\.$", ""),
                        text(view, who))
                .about(about(projectId));
        return Optional.of(view.headline().length() <= SHORT_MOST ? letter.shortly(view.headline()) : letter);
    }

    private String text(CustomerView view, Optional<ProjectContact> who) {
        List<String> parts = new ArrayList<>();
        parts.add(view.headline());
        view.facts().forEach(fact -> parts.add(fact.name() + " " + fact.words() + "."));
        List<String> steps = new ArrayList<>();
        steps.add(view.beforeTitle() + ":");
        view.before().forEach(step -> steps.add("- " + step.name() + " " + step.words()));
        parts.add(String.join("\n", steps));
        who.flatMap(contact -> links.live(LinkKind.CUSTOMER, contact.id()))
                .ifPresent(link -> parts.add(say("status.letter.remind.page") + "\n" + own.of(link.path())));
        view.callers().stream()
                .filter(caller -> !caller.phone().isEmpty())
                .forEach(caller -> parts.add(say("status.letter.remind.call", caller.name(), caller.phone())));
        parts.add(say("status.letter.remind.why", view.firm()));
        return String.join("\n\n", parts);
    }

    private String say(String key, Object... facts) {
        return texts.getMessage(key, facts, Locale.US);
    }

    /** A day that is moved, cancelled or reversed: what still waits of a reminder is overtaken. */
    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    public void overtaken(JournalEvent event) {
        if (OVER.contains(event.kind())) {
            outbox.withdraw(about(event.projectId()));
        }
    }
}
