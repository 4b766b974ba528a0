package org.plumbrow.status.page;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.evidence.EvidenceFile;
import org.plumbrow.evidence.EvidenceStore;
import org.plumbrow.project.ProjectContact;
import org.plumbrow.project.Projects;
import org.plumbrow.status.CustomerAnswers;
import org.plumbrow.status.CustomerSharing;
import org.plumbrow.status.CustomerVisits;
import org.plumbrow.status.SharedPaper;
import org.plumbrow.web.LinkEnded;
import org.plumbrow.web.link.LinkKind;
import org.plumbrow.web.link.PrivateLink;
import org.plumbrow.web.link.PrivateLinks;
import org.springframework.stereotype.Service;

/** What may be done with a private link: look, answer, take a shared file. Nothing else is reached from here. */
@Service
class CustomerVisit {

    private final PrivateLinks links;
    private final Projects projects;
    private final CustomerReading reading;
    private final CustomerPage page;
    private final PowerOffCalendar calendar;
    private final CustomerSharing sharing;
    private final EvidenceStore evidence;
    private final CustomerAnswers answers;
    private final CustomerVisits visits;

    CustomerVisit(
            PrivateLinks links,
            Projects projects,
            CustomerReading reading,
            CustomerPage page,
            PowerOffCalendar calendar,
            CustomerSharing sharing,
            EvidenceStore evidence,
            CustomerAnswers answers,
            CustomerVisits visits) {
        this.links = links;
        this.projects = projects;
        this.reading = reading;
        this.page = page;
        this.calendar = calendar;
        this.sharing = sharing;
        this.evidence = evidence;
        this.answers = answers;
        this.visits = visits;
    }

    /**
     * Whoever asks.
     *
     * @param source their address, for the limit on guessing only
     */
    record Guest(String token, String source) {}

    /** A file under the name by which the customer knows it. */
    record Taken(String title, EvidenceFile file) {}

    /** @param counts whether the day's count grows */
    CustomerView look(Guest guest, boolean counts) {
        return links.visit(LinkKind.CUSTOMER, guest.token, guest.source, link -> {
            CustomerFacts facts = reading.of(contact(link).projectId());
            if (counts) {
                visits.opened(link.branchId(), facts.project().id(), facts.today());
            }
            return page.of(facts);
        });
    }

    /** @throws LinkEnded if the person is no longer at this customer */
    private ProjectContact contact(PrivateLink link) {
        return projects.contactUnchecked(link.subjectId()).orElseThrow(LinkEnded::new);
    }

    CustomerAnswers.Outcome answer(Guest guest, LocalDate day, CustomerAnswers.Said said) {
        return links.visit(LinkKind.CUSTOMER, guest.token, guest.source, link -> {
            ProjectContact contact = contact(link);
            return answers.answer(projects.factsUnchecked(contact.projectId()), contact, day, said);
        });
    }

    Optional<byte[]> calendar(Guest guest) {
        return links.visit(
                LinkKind.CUSTOMER,
                guest.token,
                guest.source,
                link -> calendar.of(reading.of(contact(link).projectId())));
    }

    Optional<EvidenceFile> shutOffPhoto(Guest guest, boolean small) {
        return links.visit(LinkKind.CUSTOMER, guest.token, guest.source, link -> {
            UUID photo = sharing.terms(contact(link).projectId()).terms().shutOffPhotoId();
            if (photo == null) {
                return Optional.empty();
            }
            return small ? evidence.thumbnail(photo) : evidence.file(photo);
        });
    }

    Optional<Taken> paper(Guest guest, String slot) {
        return links.visit(LinkKind.CUSTOMER, guest.token, guest.source, link -> {
            Optional<SharedPaper> paper = sharing.papers(contact(link).projectId()).stream()
                    .filter(one -> Integer.toString(one.slot()).equals(slot))
                    .findFirst();
            return paper.flatMap(one -> evidence.file(one.evidenceId()).map(file -> new Taken(one.title(), file)));
        });
    }
}
