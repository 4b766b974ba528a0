package org.plumbrow.project;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * The customer and the people at the customer's side. What they are called and how they are reached stays in their own
 * rows; the journal says that it changed and names the rows. Answers with the number of the journal line.
 */
@Service
@Transactional
public class ProjectCustomers {

    private final ProjectAccess projectAccess;
    private final Access access;
    private final Projects projects;
    private final ProjectParts parts;
    private final CustomerRows rows;
    private final ProjectWas was;
    private final Journal journal;
    private final Clock clock;

    ProjectCustomers(
            ProjectAccess projectAccess,
            Access access,
            Projects projects,
            ProjectParts parts,
            CustomerRows rows,
            ProjectWas was,
            Journal journal,
            Clock clock) {
        this.projectAccess = projectAccess;
        this.access = access;
        this.projects = projects;
        this.parts = parts;
        this.rows = rows;
        this.was = was;
        this.journal = journal;
        this.clock = clock;
    }

    /** The customer as it stands. @param name empty while nobody is named */
    public record Customer(long version, String name, List<ProjectContact> contacts) {

        /** @throws NotFound if there is none with this id, or no longer */
        public ProjectContact contact(UUID contactId) {
            return contacts.stream()
                    .filter(contact -> contact.id().equals(contactId))
                    .findFirst()
                    .orElseThrow(NotFound::new);
        }
    }

    @Transactional(readOnly = true)
    public Customer customer(UUID projectId) {
        projectAccess.require(projectId, May.SEE_PROJECTS);
        return new Customer(
                parts.customer(projectId).version(),
                rows.customer(projectId).map(CustomerRows.Named::name).orElse(""),
                projects.contactsUnchecked(projectId));
    }

    /** @throws EditedMeanwhile if somebody changed the customer since */
    public Optional<Integer> rename(UUID projectId, long openedVersion, String to) {
        UUID branchId = changed(projectId, openedVersion);
        Optional<CustomerRows.Named> before = rows.customer(projectId);
        if (before.isEmpty()) {
            Instant now = clock.instant();
            UUID added = rows.addCustomer(projectId, branchId, to, now);
            return Optional.of(written(projectId, "customer.added", "Customer named.", added, now));
        }
        NewProject.NewContact named = new NewProject.NewContact(to, "", "", "", "en", false);
        return change(projectId, branchId, before.get().id(), named, "Customer's name changed.");
    }

    /** @throws EditedMeanwhile if somebody changed the customer since */
    public int addContact(UUID projectId, long openedVersion, NewProject.NewContact contact) {
        UUID branchId = changed(projectId, openedVersion);
        Instant now = clock.instant();
        return written(
                projectId, "customer.added", "Contact added.", rows.addContact(projectId, branchId, contact, now), now);
    }

    /**
     * Keeps the contact's id, on which private links and notices hang.
     *
     * @throws EditedMeanwhile if somebody changed the customer since
     * @throws NotFound if there is no such contact any more
     */
    public Optional<Integer> correctContact(
            UUID projectId, long openedVersion, UUID contactId, NewProject.NewContact to) {
        UUID branchId = changed(projectId, openedVersion);
        known(projectId, contactId);
        return change(projectId, branchId, contactId, to, "Contact changed.");
    }

    /** As {@link #correctContact}. */
    public int removeContact(UUID projectId, long openedVersion, UUID contactId) {
        changed(projectId, openedVersion);
        known(projectId, contactId);
        Instant now = clock.instant();
        rows.end(contactId, now);
        return written(projectId, "customer.removed", "Contact removed.", contactId, now);
    }

    /** Takes back what such a line did; empty when what was before has been forgotten. */
    public Optional<Integer> turnBack(JournalLine line) {
        UUID projectId = line.projectId();
        UUID contactId = UUID.fromString(line.facts().get("contact"));
        UUID branchId = changed(projectId, parts.customer(projectId).version());
        Instant now = clock.instant();
        switch (line.kind()) {
            case "customer.added" -> {
                rows.end(contactId, now);
                return Optional.of(
                        written(projectId, "customer.removed", undone(line, "taken away again"), contactId, now));
            }
            case "customer.removed" -> {
                rows.bringBack(contactId);
                return Optional.of(written(projectId, "customer.added", undone(line, "back again"), contactId, now));
            }
            default -> {
                return was.contact(UUID.fromString(line.facts().get("was")))
                        .flatMap(before ->
                                change(projectId, branchId, contactId, before, undone(line, "as it was before")));
            }
        }
    }

    private static String undone(JournalLine line, String how) {
        return "Undone, line " + line.number() + ": the row is " + how + ".";
    }

    private Optional<Integer> change(
            UUID projectId, UUID branchId, UUID contactId, NewProject.NewContact to, String sentence) {
        NewProject.NewContact before = rows.contact(contactId);
        if (before.equals(to)) {
            return Optional.empty();
        }
        Instant now = clock.instant();
        UUID kept = was.keepContact(projectId, branchId, before, now);
        rows.change(contactId, to);
        return Optional.of(journal.append(
                JournalEvent.of(
                        projectId,
                        "customer.changed",
                        sentence,
                        Map.of("contact", contactId.toString(), "was", kept.toString())),
                access.actor(),
                now));
    }

    private UUID changed(UUID projectId, long openedVersion) {
        UUID branchId = projectAccess.require(projectId, May.EDIT_PROJECT);
        ProjectCustomer customer = parts.customer(projectId);
        EditedMeanwhile.check(openedVersion, customer.version());
        customer.change();
        return branchId;
    }

    private void known(UUID projectId, UUID contactId) {
        new Customer(0, "", projects.contactsUnchecked(projectId)).contact(contactId);
    }

    private int written(UUID projectId, String kind, String sentence, UUID contactId, Instant now) {
        return journal.append(
                JournalEvent.of(projectId, kind, sentence, Map.of("contact", contactId.toString())),
                access.actor(),
                now);
    }
}
