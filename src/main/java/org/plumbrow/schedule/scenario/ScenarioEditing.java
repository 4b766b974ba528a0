package org.plumbrow.schedule.scenario;

import java.time.Clock;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.calc.calendar.Half;
import org.plumbrow.crew.AwayReason;
import org.plumbrow.crew.AwayTime;
import org.plumbrow.crew.CrewEditing;
import org.plumbrow.crew.CrewFacts;
import org.plumbrow.crew.CrewTerms;
import org.plumbrow.crew.Crews;
import org.plumbrow.crew.EquipmentEditing;
import org.plumbrow.database.Ids;
import org.plumbrow.schedule.plan.BranchVariant;
import org.plumbrow.schedule.plan.BranchVariants;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Makes scenarios, throws them away, and accepts one: what is otherwise is then recorded where it belongs. */
@Service
@Transactional
class ScenarioEditing {

    /** Each is planned at every look at the list. */
    private static final int MOST = 12;

    private final Access access;
    private final ScenarioRows rows;
    private final BranchVariants variants;
    private final Crews crews;
    private final CrewEditing crewEditing;
    private final EquipmentEditing machineEditing;
    private final Clock clock;

    ScenarioEditing(
            Access access,
            ScenarioRows rows,
            BranchVariants variants,
            Crews crews,
            CrewEditing crewEditing,
            EquipmentEditing machineEditing,
            Clock clock) {
        this.access = access;
        this.rows = rows;
        this.variants = variants;
        this.crews = crews;
        this.crewEditing = crewEditing;
        this.machineEditing = machineEditing;
        this.clock = clock;
    }

    Optional<Refusal> add(UUID newId, UUID branchId, ScenarioTerms terms) {
        access.require(branchId, May.CHANGE_PLAN);
        if (rows.of(branchId).size() >= MOST) {
            return Optional.of(new Refusal(
                    "name",
                    "There are " + MOST + " scenarios already. Throw one away first; all are planned side by side."));
        }
        rows.add(newId, branchId, terms, access.actor().name(), clock.instant());
        return Optional.empty();
    }

    Optional<Refusal> change(UUID id, long version, ScenarioTerms terms) {
        Scenario was = of(id);
        EditedMeanwhile.check(version, was.version());
        if (!rows.change(id, version, terms)) {
            throw new EditedMeanwhile(version, version + 1);
        }
        return Optional.empty();
    }

    void throwAway(UUID id, long version) {
        EditedMeanwhile.check(version, of(id).version());
        if (!rows.remove(id, version)) {
            throw new EditedMeanwhile(version, version + 1);
        }
    }

    /** @return what is wrong with it; empty when it is recorded, and the scenario gone */
    Optional<Refusal> accept(UUID id, long version) {
        Scenario scenario = of(id);
        EditedMeanwhile.check(version, scenario.version());
        Optional<Refusal> wrong = record(scenario).map(no -> Refusal.ofForm(no.sentence()));
        if (wrong.isEmpty()) {
            throwAway(id, version);
        }
        return wrong;
    }

    private Optional<Refusal> record(Scenario scenario) {
        ScenarioTerms terms = scenario.terms();
        return switch (terms.kind()) {
            case CREW_AWAY -> crewEditing.away(Ids.next(), terms.crewId(), time(scenario, AwayReason.OTHER));
            case MACHINE_AWAY -> machineEditing.away(Ids.next(), terms.machineId(), time(scenario, AwayReason.REPAIR));
            case CREW_MORE -> crewEditing.add(Ids.next(), scenario.branchId(), crew(terms));
            case NEW_JOB ->
                Optional.of(Refusal.ofForm("A job comes into the plan when its project passes the gate to signed."));
        };
    }

    private AwayTime time(Scenario scenario, AwayReason reason) {
        ScenarioTerms terms = scenario.terms();
        return new AwayTime(
                terms.firstDay(),
                Half.MORNING,
                BranchVariant.lastOf(variants.branch(scenario.branchId()), terms.firstDay(), terms.days()),
                Half.AFTERNOON,
                reason,
                terms.name());
    }

    private CrewTerms crew(ScenarioTerms terms) {
        CrewFacts like = crews.crew(terms.crewId()).orElseThrow(NotFound::new);
        return new CrewTerms(terms.name(), like.size(), like.skills(), null, terms.firstDay(), null);
    }

    private Scenario of(UUID id) {
        Scenario scenario = rows.find(id).orElseThrow(NotFound::new);
        access.require(scenario.branchId(), May.CHANGE_PLAN);
        return scenario;
    }
}
