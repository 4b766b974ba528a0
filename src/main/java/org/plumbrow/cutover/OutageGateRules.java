package org.plumbrow.cutover;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import org.plumbrow.branch.BranchFacts;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.branch.UtilityFacts;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.calendar.Notice;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.gate.AnswerKind;
import org.plumbrow.project.gate.Finding;
import org.plumbrow.project.gate.GateLook;
import org.plumbrow.project.gate.GateRule;
import org.plumbrow.project.gate.SeenAt;
import org.plumbrow.web.May;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the gate to the cutover asks of the booked window: the utility confirmed and had its notice, the customer too. */
@Configuration(proxyBeanMethods = false)
class OutageGateRules {

    /** Full working days that a customer is told ahead: the reminders go out on the two days before. */
    static final int CUSTOMER_NOTICE_DAYS = 2;

    private static final String BOOK = "Choose and book a window on the outage page.";

    /** What the rules see of the project's window, read once a look. */
    private record Seen(Optional<OutageFacts> window, Optional<UtilityFacts> utility, BranchFacts branch) {}

    /** A rule that looks at the project's window. */
    private record WindowRule(String item, Outages outages, BranchSettings settings, Function<Asked, Finding> judge)
            implements GateRule {
        @Override
        public Finding check(GateLook look) {
            Seen seen = look.once(Seen.class, this::read);
            if (seen.window.isEmpty()) {
                return new Finding.Broken("No outage is booked.", BOOK);
            }
            OutageFacts window = seen.window.get();
            if (window.state() == OutageState.PROPOSED) {
                return new Finding.Broken(
                        DayWords.of(window.day()) + " is only held; nobody was told.", "Book it and send the notices.");
            }
            return judge.apply(new Asked(window, seen.utility, seen.branch));
        }

        @Override
        public Optional<SeenAt> seenAt(UUID projectId) {
            return Optional.of(new SeenAt("Outage", "/projects/" + projectId + "/outage", May.SEE_CUTOVERS));
        }

        private Seen read(ProjectFacts project) {
            return new Seen(
                    outages.liveOrDone(project.id()),
                    Optional.ofNullable(project.site().utilityId())
                            .flatMap(id -> settings.utility(project.branchId(), id)),
                    settings.facts(project.branchId()));
        }
    }

    private record Asked(OutageFacts window, Optional<UtilityFacts> utility, BranchFacts branch) {}

    @Bean
    GateRule utilityConfirmed(Outages outages, BranchSettings settings) {
        return new WindowRule("cutover.1", outages, settings, OutageGateRules::utilityConfirmed);
    }

    @Bean
    GateRule customerTold(Outages outages, BranchSettings settings) {
        return new WindowRule("cutover.2", outages, settings, OutageGateRules::customerTold);
    }

    private static Finding utilityConfirmed(Asked asked) {
        OutageFacts window = asked.window();
        String day = DayWords.of(window.day());
        if (asked.utility().isEmpty()) {
            return new Finding.CannotTell("The site names no utility.", "Name it on the site's page.");
        }
        UtilityFacts utility = asked.utility().get();
        if (window.utilityTold() == null) {
            return new Finding.Broken(
                    utility.name() + " has not been told of " + day + " yet.",
                    "Send the notice, or write down how it went.");
        }
        LocalDate told = on(window.utilityTold(), asked.branch().zone());
        if (!utility.notice().isMet(told, window.day())) {
            return new Finding.Broken(
                    utility.name() + " was told on " + DayWords.of(told) + ". "
                            + WindowFinder.terms(utility).noticeSentence(window.day()),
                    "Move the window.");
        }
        if (window.utilityConfirmation() == null) {
            return new Finding.Broken(
                    utility.name() + " has not confirmed " + day + ".", "Write down its number on the outage page.");
        }
        return new Finding.Satisfied(utility.name() + " confirmed " + day + " (" + window.utilityConfirmation()
                + "), told on " + DayWords.of(told) + ".");
    }

    private static Finding customerTold(Asked asked) {
        OutageFacts window = asked.window();
        String day = DayWords.of(window.day());
        if (window.customerTold() == null) {
            return new Finding.Broken(
                    "The customer has not been told of " + day + " yet.",
                    "Send the notice, or write down how it went.");
        }
        if (window.customerAnswer() != null && !window.customerAnswer().agrees()) {
            return new Finding.Broken(
                    day + " does not work for the customer.",
                    "Talk to them, then move the window or write down that they agree.");
        }
        LocalDate told = on(window.customerTold(), asked.branch().zone());
        Notice notice = new Notice(CUSTOMER_NOTICE_DAYS, asked.branch().calendar());
        if (!notice.isMet(told, window.day())) {
            return new Finding.Broken(
                    "The customer was told on " + DayWords.of(told) + "; for " + day + " it had to be by "
                            + DayWords.of(notice.lastDayToSendFor(window.day())) + ".",
                    "Move the window.");
        }
        return new Finding.Recorded(
                "The customer was told of " + day + " on " + DayWords.of(told) + ".", Set.of(AnswerKind.DATE));
    }

    private static LocalDate on(OutageFacts.Told told, ZoneId zone) {
        return LocalDate.ofInstant(told.at(), zone);
    }
}
