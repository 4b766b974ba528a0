package org.plumbrow.schedule.scenario;

import java.time.Clock;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.database.Ids;
import org.plumbrow.schedule.activity.Moves;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.interceptor.TransactionAspectSupport;

/** Makes scenarios, says what is otherwise in them, throws them away, and accepts one. */
@Service
@Transactional
class ScenarioEditing {

    /** Each is planned at every look at the list. */
    private static final int MOST = 12;

    private static final int MOST_CHANGES = 8;

    private final Access access;
    private final ScenarioRows rows;
    private final ScenarioRecording recording;
    private final Moves moves;
    private final Clock clock;

    ScenarioEditing(Access access, ScenarioRows rows, ScenarioRecording recording, Moves moves, Clock clock) {
        this.access = access;
        this.rows = rows;
        this.recording = recording;
        this.moves = moves;
        this.clock = clock;
    }

    Optional<Refusal> add(UUID newId, UUID branchId, String name) {
        access.require(branchId, May.CHANGE_PLAN);
        if (rows.of(branchId).size() >= MOST) {
            return Optional.of(new Refusal(
                    "name",
                    "There are " + MOST + " scenarios already. Throw one away first; all are planned side by side."));
        }
        rows.add(newId, branchId, name, access.actor().name(), clock.instant());
        return Optional.empty();
    }

    Optional<Refusal> rename(UUID id, long version, String name) {
        EditedMeanwhile.check(version, of(id).version());
        if (!rows.rename(id, version, name)) {
            throw new EditedMeanwhile(version, version + 1);
        }
        return Optional.empty();
    }

    Optional<Refusal> addChange(UUID scenarioId, ScenarioTerms terms) {
        Scenario scenario = of(scenarioId);
        if (scenario.changes().size() >= MOST_CHANGES) {
            return Optional.of(Refusal.ofForm(
                    MOST_CHANGES + " things are otherwise already. Take one out first, or begin another scenario."));
        }
        Optional<Refusal> wrong = terms.kind() == ScenarioKind.WORK_GIVEN ? notGiven(terms) : Optional.empty();
        if (wrong.isEmpty()) {
            rows.addChange(Ids.next(), scenario, terms);
            rows.touch(scenarioId);
        }
        return wrong;
    }

    /** As the page says it on which a start is settled. */
    private Optional<Refusal> notGiven(ScenarioTerms terms) {
        UUID activity = terms.activityId();
        return activity == null
                ? Optional.empty()
                : moves.refusal(activity, ScenarioVariants.pin(terms, ""))
                        .map(no -> new Refusal(no.field().equals("day") ? "firstDay" : "crew", no.sentence()));
    }

    void takeOut(UUID scenarioId, long version, UUID changeId) {
        Scenario scenario = of(scenarioId);
        EditedMeanwhile.check(version, scenario.version());
        if (scenario.changes().stream().noneMatch(change -> change.id().equals(changeId))) {
            throw new NotFound();
        }
        rows.removeChange(changeId);
        rows.touch(scenarioId);
    }

    void throwAway(UUID id, long version) {
        EditedMeanwhile.check(version, of(id).version());
        if (!rows.remove(id, version)) {
            throw new EditedMeanwhile(version, version + 1);
        }
    }

    /** All of it but jobs, or nothing. @return what is wrong with it; empty when it is recorded, and gone from the scenario */
    Optional<Refusal> accept(UUID id, long version) {
        Scenario scenario = of(id);
        EditedMeanwhile.check(version, scenario.version());
        Optional<Refusal> wrong = scenario.notToAccept().map(Refusal::ofForm).or(() -> recording.record(scenario));
        if (wrong.isPresent()) {
            TransactionAspectSupport.currentTransactionStatus().setRollbackOnly();
        } else {
            done(scenario);
        }
        return wrong;
    }

    /** What is recorded leaves the table; a job stays until it is a project. */
    private void done(Scenario scenario) {
        if (scenario.jobs().isEmpty()) {
            throwAway(scenario.id(), scenario.version());
        } else {
            scenario.changes().stream()
                    .filter(change -> !change.isJob())
                    .forEach(change -> rows.removeChange(change.id()));
            rows.touch(scenario.id());
        }
    }

    private Scenario of(UUID id) {
        Scenario scenario = rows.find(id).orElseThrow(NotFound::new);
        access.require(scenario.branchId(), May.CHANGE_PLAN);
        return scenario;
    }
}
