package org.plumbrow.status;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.account.BranchPeople;
import org.plumbrow.account.PersonCard;
import org.plumbrow.cutover.OutageFacts;
import org.plumbrow.notice.NewNotice;
import org.plumbrow.notice.NoticeKind;
import org.plumbrow.notice.Outbox;
import org.plumbrow.notice.OwnAddress;
import org.plumbrow.project.Duty;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.status.CustomerAnswers.Said;
import org.plumbrow.web.Role;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Letters to our own people about a customer; part of the change they tell of. */
@Component
public class StaffLetters {

    private final Outbox outbox;
    private final BranchPeople people;
    private final OwnAddress own;

    StaffLetters(Outbox outbox, BranchPeople people, OwnAddress own) {
        this.outbox = outbox;
        this.people = people;
        this.own = own;
    }

    void answered(ProjectFacts project, OutageFacts window, Said said, String day) {
        String about = "customer-answer:" + window.id();
        outbox.withdraw(about);
        List<String> lines = new ArrayList<>();
        lines.add(
                said.agrees()
                        ? "The customer of " + project.name() + " agrees to the outage on " + day + "."
                        : "The outage on " + day + " does not work for the customer of " + project.name() + ".");
        if (!said.reason().isEmpty()) {
            lines.add("They write: " + said.reason());
        }
        if (!said.name().isEmpty()) {
            lines.add("Signed: " + said.name());
        }
        lines.add(
                said.agrees()
                        ? "Nothing is left to do about it."
                        : "Call them, then choose another day:\n" + own.of("/projects/" + project.id() + "/outage"));
        String subject =
                project.name() + ": " + day + (said.agrees() ? " works" : " does not work") + " for the customer";
        toProjectManager(project, about, subject, lines);
    }

    /**
     * To who is in charge of the project; where nobody with an account is, to the branch's managers.
     *
     * @param lines the fact again, what to do
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public void toProjectManager(ProjectFacts project, String about, String subject, List<String> lines) {
        List<String> text = new ArrayList<>(lines);
        text.add("You get this because you are in charge of " + project.number() + ".");
        for (PersonCard person : inCharge(project)) {
            outbox.post(NewNotice.ofProject(
                            NoticeKind.STAFF,
                            project.branchId(),
                            project.id(),
                            new NewNotice.Recipient(person.name(), person.email()),
                            subject,
                            String.join("\n\n", text))
                    .about(about));
        }
    }

    private List<PersonCard> inCharge(ProjectFacts project) {
        List<PersonCard> all = people.of(project.branchId());
        Optional<UUID> manager =
                project.inCharge(Duty.PROJECT_MANAGER).flatMap(who -> Optional.ofNullable(who.personId()));
        List<PersonCard> named = all.stream()
                .filter(person -> manager.filter(person.id()::equals).isPresent())
                .toList();
        return named.isEmpty()
                ? all.stream()
                        .filter(person -> person.roles().contains(Role.MANAGER))
                        .toList()
                : named;
    }
}
