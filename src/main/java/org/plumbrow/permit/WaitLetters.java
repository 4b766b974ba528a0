package org.plumbrow.permit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.plumbrow.account.BranchPeople;
import org.plumbrow.account.PersonCard;
import org.plumbrow.notice.NewNotice;
import org.plumbrow.notice.NoticeKind;
import org.plumbrow.notice.Outbox;
import org.plumbrow.notice.OwnAddress;
import org.plumbrow.project.Duty;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.web.Role;
import org.springframework.stereotype.Component;

/** The reminder of waits: to whoever looks after the project's permits, else its project manager, else the branch's. */
@Component
class WaitLetters {

    private static final int TOLD_MOST = 400;

    private final Outbox outbox;
    private final BranchPeople people;
    private final OwnAddress own;

    WaitLetters(Outbox outbox, BranchPeople people, OwnAddress own) {
        this.outbox = outbox;
        this.people = people;
        this.own = own;
    }

    /** Names, as the page of the wait shows them. */
    String told(ProjectFacts project) {
        String names = whoLooksAfter(project).stream().map(PersonCard::name).collect(Collectors.joining(", "));
        return names.length() <= TOLD_MOST ? names : names.substring(0, TOLD_MOST);
    }

    void post(ProjectFacts project, List<Awaited> waits, LocalDate today) {
        List<String> lines = new ArrayList<>();
        waits.forEach(one -> lines.add(WaitReminder.of(one, today).orElseThrow().words(one)));
        lines.add("Ask, and write down what they say:\n" + own.of("/projects/" + project.id() + "/waits"));
        lines.add("You get this because you look after what " + project.number() + " waits for.");
        String subject = waits.size() == 1
                ? project.name() + ": " + waits.get(0).what()
                : project.name() + ": " + waits.size() + " waits";
        for (PersonCard person : whoLooksAfter(project)) {
            outbox.post(NewNotice.ofProject(
                            NoticeKind.STAFF,
                            project.branchId(),
                            project.id(),
                            new NewNotice.Recipient(person.name(), person.email()),
                            subject,
                            String.join("\n\n", lines))
                    .about("waits:" + project.id()));
        }
    }

    private List<PersonCard> whoLooksAfter(ProjectFacts project) {
        List<PersonCard> all = people.of(project.branchId());
        return Stream.of(Duty.PERMITS, Duty.PROJECT_MANAGER)
                .map(duty -> project.inCharge(duty).flatMap(who -> Optional.ofNullable(who.personId())))
                .flatMap(Optional::stream)
                .map(id -> named(all, id))
                .filter(found -> !found.isEmpty())
                .findFirst()
                .orElseGet(() -> all.stream()
                        .filter(person -> person.roles().contains(Role.MANAGER))
                        .toList());
    }

    private static List<PersonCard> named(List<PersonCard> all, UUID id) {
        return all.stream().filter(person -> person.id().equals(id)).toList();
    }
}
