package org.plumbrow.crew;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.account.BranchPeople;
import org.plumbrow.branch.ChangeLog;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Adds and changes crews and their absences; each change stands in the branch's log. */
@Service
@Transactional
public class CrewEditing {

    private final CrewRows crews;
    private final CrewAbsences absences;
    private final BranchPeople people;
    private final Access access;
    private final ChangeLog log;

    CrewEditing(CrewRows crews, CrewAbsences absences, BranchPeople people, Access access, ChangeLog log) {
        this.crews = crews;
        this.absences = absences;
        this.people = people;
        this.access = access;
        this.log = log;
    }

    /** @return what is wrong; empty when the crew is now there */
    public Optional<Refusal> add(UUID newId, UUID branchId, CrewTerms terms) {
        access.require(branchId, May.CHANGE_SETTINGS);
        Optional<Refusal> wrong = check(branchId, terms, Optional.empty());
        if (wrong.isEmpty()) {
            crews.saveAndFlush(new Crew(newId, branchId, terms));
            log.added(branchId, access.actor(), thing(terms.name()), terms.written(lead(terms)));
        }
        return wrong;
    }

    /** @return what is wrong; empty when the crew is now changed */
    public Optional<Refusal> change(UUID crewId, long version, CrewTerms terms) {
        Crew crew = of(crewId);
        EditedMeanwhile.check(version, crew.version());
        CrewTerms before = crew.terms();
        Optional<Refusal> wrong = check(crew.branchId(), terms, Optional.ofNullable(before.leadPersonId()));
        if (wrong.isEmpty()) {
            crew.become(terms);
            crews.saveAndFlush(crew);
            log.changed(
                    crew.branchId(),
                    access.actor(),
                    thing(before.name()),
                    before.written(lead(before)),
                    terms.written(lead(terms)));
        }
        return wrong;
    }

    /** @return what is wrong; empty when the crew is now away then */
    public Optional<Refusal> away(UUID newId, UUID crewId, AwayTime time) {
        Crew crew = of(crewId);
        if (!time.isInOrder()) {
            return Optional.of(AwayTime.outOfOrder());
        }
        absences.saveAndFlush(new CrewAbsence(newId, crew, time));
        log.happened(crew.branchId(), access.actor(), thing(crew.name()), "Away", "", time.words());
        return Optional.empty();
    }

    /** @return when the crew would have been away */
    public AwayTime notAway(UUID crewId, UUID absenceId) {
        Crew crew = of(crewId);
        CrewAbsence absence = absences.findById(absenceId)
                .filter(found -> found.crewId().equals(crewId))
                .orElseThrow(NotFound::new);
        absences.delete(absence);
        log.happened(
                crew.branchId(),
                access.actor(),
                thing(crew.name()),
                "Away",
                absence.time().words(),
                "");
        return absence.time();
    }

    private Crew of(UUID crewId) {
        Crew crew = crews.findById(crewId).orElseThrow(NotFound::new);
        access.require(crew.branchId(), May.CHANGE_SETTINGS);
        return crew;
    }

    /** @param leadBefore may stay, also after that person has left */
    private Optional<Refusal> check(UUID branchId, CrewTerms terms, Optional<UUID> leadBefore) {
        if (terms.until() != null && terms.until().isBefore(terms.from())) {
            return Optional.of(new Refusal("until", "The last day lies before the first. Choose a later one."));
        }
        Integer qualified = terms.electricalPeople();
        if (qualified != null && qualified > terms.size()) {
            return Optional.of(new Refusal(
                    "electricalPeople",
                    "The crew has " + terms.size() + " people. Write at most so many, or change the people."));
        }
        UUID lead = terms.leadPersonId();
        boolean known = lead == null
                || leadBefore.filter(lead::equals).isPresent()
                || people.find(branchId, lead).isPresent();
        return known
                ? Optional.empty()
                : Optional.of(new Refusal("leadPersonId", "This person is not in the branch. Choose somebody who is."));
    }

    private String lead(CrewTerms terms) {
        UUID lead = terms.leadPersonId();
        return lead == null ? "" : people.names(List.of(lead)).getOrDefault(lead, "");
    }

    private static String thing(String name) {
        return "crew " + name;
    }
}
