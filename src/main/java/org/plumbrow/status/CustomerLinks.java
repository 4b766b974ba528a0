package org.plumbrow.status;

import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.notice.NewNotice;
import org.plumbrow.notice.NoticeKind;
import org.plumbrow.notice.Outbox;
import org.plumbrow.notice.OwnAddress;
import org.plumbrow.project.Journal;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectContact;
import org.plumbrow.project.Projects;
import org.plumbrow.web.Access;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.SecurityEvent;
import org.plumbrow.web.link.LinkKind;
import org.plumbrow.web.link.PrivateLink;
import org.plumbrow.web.link.PrivateLinks;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * The private links to a project's page: one for each person at the customer's side, so that one can end without the
 * others. Ending a link cannot be undone: who had the address is not to have it again.
 */
@Service
@Transactional
public class CustomerLinks {

    private final PrivateLinks links;
    private final Projects projects;
    private final ProjectAccess projectAccess;
    private final OwnAddress own;
    private final Outbox outbox;
    private final Journal journal;
    private final Access access;
    private final Clock clock;
    private final ApplicationEventPublisher events;
    private final MessageSource texts;

    CustomerLinks(
            PrivateLinks links,
            Projects projects,
            ProjectAccess projectAccess,
            OwnAddress own,
            Outbox outbox,
            Journal journal,
            Access access,
            Clock clock,
            ApplicationEventPublisher events,
            MessageSource texts) {
        this.links = links;
        this.projects = projects;
        this.projectAccess = projectAccess;
        this.own = own;
        this.outbox = outbox;
        this.journal = journal;
        this.access = access;
        this.clock = clock;
        this.events = events;
        this.texts = texts;
    }

    /** Somebody at the customer's side, and the link that they have; none is null. */
    public record Held(ProjectContact contact, Optional<PrivateLink> link) {}

    /** Everybody at the customer's side, who decides first. */
    @Transactional(readOnly = true)
    public List<Held> of(UUID projectId) {
        projectAccess.require(projectId, May.SHARE_WITH_CUSTOMER);
        List<ProjectContact> people = projects.contactsUnchecked(projectId);
        Map<UUID, PrivateLink> live = links.live(
                LinkKind.CUSTOMER, people.stream().map(ProjectContact::id).toList());
        return people.stream()
                .map(contact -> new Held(contact, Optional.ofNullable(live.get(contact.id()))))
                .toList();
    }

    /** @throws NotFound if there is nobody like that at this project's customer */
    @Transactional(readOnly = true)
    public Held of(UUID projectId, UUID contactId) {
        projectAccess.require(projectId, May.SHARE_WITH_CUSTOMER);
        ProjectContact contact = projects.contactUnchecked(contactId)
                .filter(one -> one.projectId().equals(projectId))
                .orElseThrow(NotFound::new);
        return new Held(contact, links.live(LinkKind.CUSTOMER, contactId));
    }

    /** The whole address of a link, to be handed to the person that it is for. */
    public String address(PrivateLink link) {
        return own.of(link.path());
    }

    /** A new link; one that the person had before ends. */
    public PrivateLink make(UUID projectId, UUID contactId) {
        Held held = of(projectId, contactId);
        UUID branchId = projectAccess.require(projectId, May.SHARE_WITH_CUSTOMER);
        PrivateLink made = links.make(LinkKind.CUSTOMER, branchId, contactId, access.actor());
        String sentence = held.link.isPresent()
                ? "Private link made anew; the one before has ended."
                : "Private link to the customer's page made.";
        wrote(projectId, contactId, "status.linked", "link-made", sentence);
        return made;
    }

    /** @return false if there was none */
    public boolean end(UUID projectId, UUID contactId) {
        of(projectId, contactId);
        boolean ended = links.end(LinkKind.CUSTOMER, contactId);
        if (ended) {
            outbox.withdraw(about(contactId));
            wrote(projectId, contactId, "status.unlinked", "link-ended", "Private link to the customer's page ended.");
        }
        return ended;
    }

    private void wrote(UUID projectId, UUID contactId, String kind, String security, String sentence) {
        journal.append(
                JournalEvent.of(projectId, kind, sentence, Map.of("contact", contactId.toString())),
                access.actor(),
                clock.instant());
        events.publishEvent(SecurityEvent.of(security, access.actor(), sentence));
    }

    /** Writes the e-mail that brings the person their link. @return false if they have none */
    public boolean send(UUID projectId, UUID contactId) {
        Held held = of(projectId, contactId);
        held.link.ifPresent(link -> {
            outbox.withdraw(about(contactId));
            outbox.post(letter(projectId, held.contact, link));
        });
        return held.link.isPresent();
    }

    private NewNotice letter(UUID projectId, ProjectContact to, PrivateLink link) {
        var project = projects.factsUnchecked(projectId);
        String text = String.join(
                "\n\n",
                text("status.letter.link.what", project.name()),
                address(link),
                text("status.letter.link.keep"),
                text("status.letter.link.why", access.visitor().name()));
        return NewNotice.ofProject(
                        NoticeKind.CUSTOMER,
                        project.branchId(),
                        projectId,
                        new NewNotice.Recipient(to.name(), to.email()),
                        text("status.letter.link.subject", project.name()),
                        text)
                .about(about(to.id()));
    }

    private static String about(UUID contactId) {
        return "customer-link:" + contactId;
    }

    private String text(String key, Object... facts) {
        return texts.getMessage(key, facts, Locale.US);
    }
}
