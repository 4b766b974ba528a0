package org.plumbrow.status.page;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.plumbrow.evidence.EvidenceFacts;
import org.plumbrow.project.Duty;
import org.plumbrow.project.Stage;
import org.plumbrow.status.DutyPhones;
import org.plumbrow.status.page.CustomerView.Caller;
import org.plumbrow.status.page.CustomerView.Paper;
import org.plumbrow.status.page.CustomerView.ShutOff;
import org.springframework.stereotype.Service;

/** Writes the customer's page of a project: for the private link, and for the branch to look at beforehand. */
@Service
public class CustomerPage {

    private static final double MEGABYTE = 1024.0 * 1024.0;
    private static final double LEAST_SHOWN_MB = 0.1;

    private final CustomerReading reading;
    private final Headline headline;
    private final Preparing preparing;
    private final Course course;
    private final CustomerWords words;

    CustomerPage(CustomerReading reading, Headline headline, Preparing preparing, Course course, CustomerWords words) {
        this.reading = reading;
        this.headline = headline;
        this.preparing = preparing;
        this.course = course;
        this.words = words;
    }

    /** Whoever calls has asked who may see it. */
    public CustomerView of(UUID projectId) {
        return of(reading.of(projectId));
    }

    CustomerView of(CustomerFacts facts) {
        Situation now = facts.situation();
        List<String> next = course.next(facts);
        return new CustomerView(
                words.say("status.firm", facts.branchName()),
                facts.project().name(),
                headline.of(facts),
                headline.facts(facts),
                headline.said(facts, next),
                headline.asked(facts),
                facts.terms().message(),
                preparing.title(now),
                preparing.of(now, facts.project()),
                now.is(Situation.Kind.STAGE) ? List.of() : next,
                course.posts(facts),
                shutOff(facts),
                facts.papers().stream().map(this::paper).toList(),
                callers(facts),
                now.hasAppointment()
                        ? words.say(now.is(Situation.Kind.AHEAD) ? "status.calendar.add" : "status.calendar.remove")
                        : null,
                updated(facts),
                now.goesOnToday(facts.today()));
    }

    private ShutOff shutOff(CustomerFacts facts) {
        boolean built = Stage.INSTALLED.isReachedAt(facts.project().stage());
        String unknown = words.say(built ? "status.shutoff.ask" : "status.shutoff.later");
        String place = facts.terms().shutOffPlace();
        boolean there = built || !place.isEmpty() || facts.ahead().building();
        return new ShutOff(place, facts.hasShutOffPhoto(), unknown, there);
    }

    private Paper paper(CustomerFacts.Shown paper) {
        EvidenceFacts file = paper.evidence();
        double size = Math.max(LEAST_SHOWN_MB, file.sizeBytes() / MEGABYTE);
        String kind = words.say("status.paper." + file.kind().name());
        return new Paper(
                paper.slot(),
                paper.title(),
                words.say("status.paper.what", kind, String.format(Locale.US, "%.1f", size)));
    }

    private List<Caller> callers(CustomerFacts facts) {
        boolean outage = facts.situation().window() != null;
        return facts.people().stream()
                .filter(who -> who.duty() == Duty.PROJECT_MANAGER || outage)
                .map(this::caller)
                .toList();
    }

    private Caller caller(DutyPhones.Reached who) {
        String part = words.say("status.caller." + who.duty().name());
        return new Caller(who.name(), part, who.phone(), who.phone().replaceAll("[^0-9+]", ""));
    }

    private String updated(CustomerFacts facts) {
        LocalDate today = facts.today();
        return words.say(
                "status.updated",
                CustomerWords.day(today, today),
                words.time(facts.now(), facts.zone()),
                CustomerWords.zone(facts.zone()));
    }
}
