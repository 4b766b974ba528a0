package org.plumbrow.status.desk;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.plumbrow.evidence.EvidenceFacts;
import org.plumbrow.notice.NoticeLine;
import org.plumbrow.project.ProjectTitle;
import org.plumbrow.status.CustomerAnswers;
import org.plumbrow.status.CustomerLinks;
import org.plumbrow.status.CustomerSharing;
import org.plumbrow.status.CustomerVisits;
import org.plumbrow.status.DutyPhones;
import org.plumbrow.status.SharedPaper;
import org.plumbrow.web.link.PrivateLink;

/**
 * What the branch's page about the customer shows.
 *
 * @param papers shared now, with what they are; those that were hidden since say so
 * @param outage the day of the outage that is to come, as the customer was told it
 * @param written what was written to the customer, newest first
 */
record DeskSheet(
        ProjectTitle title,
        List<CustomerLinks.Held> people,
        CustomerSharing.Written words,
        Optional<EvidenceFacts> photo,
        List<Shared> papers,
        List<DutyPhones.Reached> phones,
        List<CustomerAnswers.Answer> answers,
        Optional<LocalDate> outage,
        List<CustomerVisits.Day> visits,
        List<NoticeLine> written) {

    /** A shared paper and the evidence that it is. */
    record Shared(SharedPaper paper, EvidenceFacts evidence) {}

    long links() {
        return people.stream().filter(held -> held.link().isPresent()).count();
    }

    Optional<Instant> lastOpened() {
        return people.stream()
                .flatMap(held -> held.link().stream())
                .flatMap(link -> link.lastVisitAt().stream())
                .max(Comparator.naturalOrder());
    }

    /** {@code refused}, {@code none}, {@code never} or {@code opened}: the end of the headline's key. */
    public String headline() {
        if (isRefused()) {
            return "refused";
        }
        if (links() == 0) {
            return "none";
        }
        return lastOpened().isPresent() ? "opened" : "never";
    }

    /** Whether the newest answer says that the day to come does not work. */
    private boolean isRefused() {
        return answers.stream()
                .findFirst()
                .filter(answer -> !answer.agrees())
                .map(CustomerAnswers.Answer::day)
                .filter(day -> outage.filter(day::equals).isPresent())
                .isPresent();
    }

    public long liveLinks() {
        return links();
    }

    public Optional<Instant> openedAt() {
        return lastOpened();
    }

    /** What the page does not tell yet, as keys below {@code status.desk.open.}. */
    public List<String> open() {
        List<String> open = new ArrayList<>();
        if (people.isEmpty()) {
            open.add("nobody");
        } else if (links() == 0) {
            open.add("link");
        }
        if (phones.isEmpty()) {
            open.add("manager");
        } else if (phones.stream().anyMatch(who -> who.phone().isEmpty())) {
            open.add("phone");
        }
        if (words.terms().shutOffPlace().isEmpty()) {
            open.add("shutoff");
        }
        return open;
    }

    /** Whether a person's link is live, for the shape before the words. */
    public boolean isLive(CustomerLinks.Held held) {
        return held.link().map(PrivateLink::validUntil).isPresent();
    }
}
