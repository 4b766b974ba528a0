package org.plumbrow.schedule.tell;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.plumbrow.account.BranchPeople;
import org.plumbrow.account.PersonCard;
import org.plumbrow.crew.CrewFacts;
import org.plumbrow.crew.Crews;
import org.plumbrow.notice.NewNotice;
import org.plumbrow.notice.NoticeKind;
import org.plumbrow.notice.OwnAddress;
import org.plumbrow.project.ProjectContact;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.schedule.plan.PlanHead;
import org.plumbrow.schedule.plan.ToTell;
import org.plumbrow.web.NotFound;
import org.springframework.stereotype.Component;

/** Writes what a crew lead or a customer is told of a plan. */
@Component
class TellLetters {

    private final Crews crews;
    private final BranchPeople people;
    private final Projects projects;
    private final OwnAddress own;

    TellLetters(Crews crews, BranchPeople people, Projects projects, OwnAddress own) {
        this.crews = crews;
        this.people = people;
        this.projects = projects;
        this.own = own;
    }

    NewNotice of(PlanHead plan, ToTell who) {
        NewNotice letter = who.whom() == ToTell.Whom.CREW ? toCrew(plan, who) : toCustomer(plan, who);
        return letter.about("plan:%s:%s".formatted(plan.id(), who.id()));
    }

    private NewNotice toCrew(PlanHead plan, ToTell who) {
        CrewFacts crew = crews.crew(who.id()).orElseThrow(NotFound::new);
        Optional<PersonCard> lead = crew.leadPersonId().flatMap(id -> find(plan.branchId(), id));
        return NewNotice.ofBranch(
                plan.branchId(),
                new NewNotice.Recipient(
                        lead.map(PersonCard::name).orElse(crew.name()),
                        lead.map(PersonCard::email).orElse("")),
                "%s: %s of your next two weeks changed".formatted(crew.name(), dates(who)),
                String.join(
                        "\n\n",
                        "%s of %s changed with plan %d.".formatted(dates(who), crew.name(), plan.number()),
                        list(who.lines()),
                        "Your week as it is now:\n" + own.of("/crews/" + crew.id() + "/week"),
                        "You get this because you work with " + crew.name() + "."));
    }

    private Optional<PersonCard> find(UUID branchId, UUID personId) {
        return people.find(branchId, personId);
    }

    private NewNotice toCustomer(PlanHead plan, ToTell who) {
        ProjectFacts project = projects.factsUnchecked(who.id());
        NewNotice.Recipient to = projects.contactsUnchecked(who.id()).stream()
                .findFirst()
                .map((ProjectContact contact) -> new NewNotice.Recipient(contact.name(), contact.email()))
                .orElse(new NewNotice.Recipient(project.customer(), ""));
        return NewNotice.ofProject(
                NoticeKind.CUSTOMER,
                plan.branchId(),
                who.id(),
                to,
                "Other days for the work on your solar system",
                String.join(
                        "\n\n",
                        "The days that we plan for your solar system have changed:",
                        list(who.lines()),
                        "A planned day can move again. The hour without power is agreed with you by itself.",
                        "Call us if one of these days does not suit you.",
                        "You get this because we build the solar system of " + project.name() + "."));
    }

    private static String dates(ToTell who) {
        return who.lines().size() == 1 ? "1 date" : who.lines().size() + " dates";
    }

    private static String list(List<String> lines) {
        return lines.stream().map(line -> "- " + line).collect(Collectors.joining("\n"));
    }
}
