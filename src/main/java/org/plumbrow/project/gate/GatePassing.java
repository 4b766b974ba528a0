package org.plumbrow.project.gate;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectStages;
import org.plumbrow.project.Stage;
import org.plumbrow.project.Standing;
import org.plumbrow.web.Access;
import org.plumbrow.web.Actor;
import org.plumbrow.web.May;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Lets a project through a gate, and back. The gate is judged once more in the transaction that passes it. */
@Service
@Transactional
public class GatePassing {

    private final GateDoor door;
    private final GateRoles roles;
    private final ProjectStages stages;
    private final Access access;
    private final Clock clock;

    GatePassing(GateDoor door, GateRoles roles, ProjectStages stages, Access access, Clock clock) {
        this.door = door;
        this.roles = roles;
        this.stages = stages;
        this.access = access;
        this.clock = clock;
    }

    /**
     * Passes the gate to the next stage.
     *
     * @param reachedOn the day as people count it, today or earlier
     * @return why not, naming each item that is missing; empty when it is passed
     */
    public Optional<Refusal> pass(UUID projectId, Stage to, LocalDate reachedOn) {
        roles.require(projectId, May.PASS_GATE);
        return passUnchecked(projectId, to, reachedOn, access.actor(), clock.instant());
    }

    /** As {@link #pass} for work in the background: the caller has asked for access and says who and when. */
    public Optional<Refusal> passUnchecked(UUID projectId, Stage to, LocalDate reachedOn, Actor by, Instant at) {
        GateView gate = door.inTurn(projectId, to);
        Optional<Refusal> no = whyNot(gate).or(() -> whyNotOn(gate, reachedOn));
        if (no.isEmpty()) {
            door.passed(gate, reachedOn, by, at);
            stages.pass(projectId, to, reachedOn, by, at);
        }
        return no;
    }

    private static Optional<Refusal> whyNot(GateView gate) {
        if (gate.standing() != Standing.OPEN) {
            return Optional.of(Refusal.ofForm("This project is "
                    + GateBook.lower(gate.standing().words()) + ". Take it up again, then pass the gate."));
        }
        if (gate.isPassed()) {
            return Optional.of(
                    Refusal.ofForm("The gate to " + GateBook.label(gate.to()) + " has been passed already."));
        }
        if (!gate.isNext()) {
            String next = Stage.after(gate.reached()).map(GateBook::label).orElseThrow();
            return Optional.of(Refusal.ofForm("The next gate is the one to " + next + "."));
        }
        return gate.isOpen() ? Optional.empty() : Optional.of(Refusal.ofForm(staysShut(gate)));
    }

    /** "The gate to installed stays shut: 2 items are missing. Trench inspection (County office) and labels (Nell, electrician)." */
    static String staysShut(GateView gate) {
        var missing = gate.missing();
        String items = missing.stream()
                .map(item -> item.asked().words() + " (" + item.who() + ")")
                .collect(Collectors.joining("; "));
        return "The gate to " + GateBook.label(gate.to()) + " stays shut: "
                + (missing.size() == 1 ? "1 item is" : missing.size() + " items are") + " missing. " + items + ".";
    }

    private Optional<Refusal> whyNotOn(GateView gate, LocalDate day) {
        if (day.isAfter(door.today(gate.branchId(), clock.instant()))) {
            return Optional.of(new Refusal("reachedOn", "Choose today or an earlier day."));
        }
        ProjectStages.Reached before =
                gate.reached() == null ? null : stages.reached(gate.projectId()).get(gate.reached());
        return before != null && day.isBefore(before.on())
                ? Optional.of(new Refusal(
                        "reachedOn",
                        "The stage before was reached on " + DayWords.withYear(before.on())
                                + ". Choose that day or a later one."))
                : Optional.empty();
    }

    /** Back to an earlier stage, or to none. Answers stay as they are, and can be changed again. */
    public Optional<Refusal> goBack(UUID projectId, @Nullable Stage to, String reason) {
        roles.require(projectId, May.PASS_GATE);
        ProjectFacts facts = door.factsInTurn(projectId);
        boolean earlier =
                facts.stage() != null && (to == null || (to.isReachedAt(facts.stage()) && to != facts.stage()));
        if (!earlier) {
            return Optional.of(new Refusal("to", "Choose an earlier stage than " + Stage.wordsOf(facts.stage()) + "."));
        }
        if (reason.isBlank() || reason.length() > 500) {
            return Optional.of(
                    new Refusal("reason", "Write the reason, at most 500 letters: it stands in the journal."));
        }
        stages.goBack(projectId, to, reason.strip(), access.actor());
        return Optional.empty();
    }
}
