package org.plumbrow.crew;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.plumbrow.account.BranchPeople;
import org.plumbrow.account.PersonCard;
import org.plumbrow.branch.Saving;
import org.plumbrow.calc.duration.Skill;
import org.plumbrow.web.Access;
import org.plumbrow.web.BranchCard;
import org.plumbrow.web.May;
import org.plumbrow.web.NotForYourRole;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Option;
import org.plumbrow.web.Role;
import org.plumbrow.web.Words;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

/** What the page of a crew shows, and to whom: a crew lead opens only the crews that they lead. */
@Component
class CrewSheet {

    private static final List<AwayReason> REASONS =
            List.of(AwayReason.TRAINING, AwayReason.HOLIDAY, AwayReason.ILLNESS, AwayReason.LENT_OUT, AwayReason.OTHER);

    private final Crews crews;
    private final BranchPeople people;
    private final Access access;
    private final Words words;
    private final List<CrewPage> pages;

    CrewSheet(Crews crews, BranchPeople people, Access access, Words words, ObjectProvider<CrewPage> pages) {
        this.crews = crews;
        this.people = people;
        this.access = access;
        this.words = words;
        this.pages =
                pages.stream().sorted(Comparator.comparingInt(CrewPage::order)).toList();
    }

    List<CrewPage> pages() {
        return pages;
    }

    /** @throws NotForYourRole if the person is only a crew lead, of another crew */
    CrewFacts open(UUID crewId) {
        CrewFacts crew = crews.crew(crewId).orElseThrow(NotFound::new);
        access.require(crew.branchId(), May.SEE_CREWS);
        if (!mayOpen(crew)) {
            throw new NotForYourRole("Managers, project managers and the crew's own lead");
        }
        return crew;
    }

    CrewFacts toChange(UUID crewId) {
        CrewFacts crew = crews.crew(crewId).orElseThrow(NotFound::new);
        access.require(crew.branchId(), May.CHANGE_SETTINGS);
        return crew;
    }

    boolean mayOpen(CrewFacts crew) {
        boolean leadOnly = access.visitor()
                .branch(crew.branchId())
                .map(BranchCard::roles)
                .filter(roles ->
                        roles.stream().noneMatch(role -> role != Role.CREW_LEAD && May.SEE_CREWS.allows(List.of(role))))
                .isPresent();
        return !leadOnly
                || crew.leadPersonId()
                        .filter(access.visitor().personId()::equals)
                        .isPresent();
    }

    Saving.Theirs theirs(UUID crewId) {
        CrewFacts crew = crews.crew(crewId).orElseThrow(NotFound::new);
        CrewForm stored = CrewForm.of(crew);
        return new Saving.Theirs(
                "this crew",
                CrewPages.ALL + "/" + crewId,
                crew.version(),
                stored.terms().written(crew.leadName()));
    }

    String leadName(UUID branchId, @Nullable UUID personId) {
        return people.of(branchId).stream()
                .filter(person -> Objects.equals(person.id(), personId))
                .map(PersonCard::name)
                .findFirst()
                .orElse("");
    }

    String newPage(UUID branchId, Model model) {
        choices(branchId, null, model);
        return "crew/crew-new";
    }

    String page(CrewFacts crew, Model model) {
        model.addAttribute("crew", crew);
        model.addAttribute("crewPages", pages);
        model.addAttribute("today", words.today());
        model.addAttribute("awayToday", crew.awayOn(words.today()).orElse(null));
        model.addAttribute("halves", AwayWords.halves());
        model.addAttribute("reasons", AwayWords.reasons(REASONS));
        boolean mayChange = access.may(crew.branchId(), May.CHANGE_SETTINGS);
        model.addAttribute("mayChange", mayChange);
        if (mayChange) {
            choices(crew.branchId(), crew, model);
        }
        return "crew/crew";
    }

    private void choices(UUID branchId, @Nullable CrewFacts crew, Model model) {
        model.addAttribute(
                "skillOptions",
                Arrays.stream(Skill.values())
                        .map(skill -> new Option(skill.name(), skill.words()))
                        .toList());
        List<PersonCard> all = people.of(branchId);
        Stream<Option> former = crew == null
                ? Stream.empty()
                : crew.leadPersonId().stream()
                        .filter(lead ->
                                all.stream().noneMatch(person -> person.id().equals(lead)))
                        .map(lead -> new Option(lead.toString(), crew.leadName()));
        Stream<Option> here = all.stream().map(person -> new Option(person.id().toString(), person.name()));
        model.addAttribute(
                "leads",
                Stream.of(Stream.of(new Option("", "Nobody yet")), here, former)
                        .flatMap(options -> options)
                        .toList());
    }
}
