package org.plumbrow.project.gate;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.plumbrow.evidence.EvidenceFacts;
import org.plumbrow.project.Stage;
import org.plumbrow.project.gate.GateDesk.Act;
import org.plumbrow.project.gate.GateDesk.Turn;
import org.plumbrow.web.Access;
import org.plumbrow.web.Actor;
import org.plumbrow.web.May;
import org.plumbrow.web.NotForYourRole;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * What people do at the items of a gate. Each act names the item's version as the person saw it: 0 while nobody has
 * answered; a newer one is answered with {@link org.plumbrow.web.EditedMeanwhile}. What cannot be done is a
 * {@link Refusal} and changes nothing.
 */
@Service
@Transactional
public class GateAnswers {

    static final Duration UNDO_FOR = Duration.ofHours(24);
    private static final int MOST_LETTERS = 500;

    private final GateDesk desk;
    private final GateRoles roles;
    private final AnswerCheck check;
    private final Access access;
    private final Clock clock;

    GateAnswers(GateDesk desk, GateRoles roles, AnswerCheck check, Access access, Clock clock) {
        this.desk = desk;
        this.roles = roles;
        this.check = check;
        this.access = access;
        this.clock = clock;
    }

    public Optional<Refusal> answer(UUID projectId, ItemAnswer answer) {
        return answer(projectId, List.of(answer));
    }

    /** Several items in one transaction, all or none; the list of projects is told once, at the end. */
    public Optional<Refusal> answer(UUID projectId, List<ItemAnswer> answers) {
        UUID branchId = roles.require(projectId, May.ANSWER_GATE_ITEM);
        return answer(projectId, answers, access.actor(), clock.instant(), item -> roles.requireItem(branchId, item));
    }

    /** As {@link #answer(UUID, List)} for work in the background: the caller has asked for access and says who and when. */
    public Optional<Refusal> answerUnchecked(UUID projectId, List<ItemAnswer> answers, Actor by, Instant at) {
        return answer(projectId, answers, by, at, item -> {});
    }

    private Optional<Refusal> answer(
            UUID projectId,
            List<ItemAnswer> answers,
            Actor by,
            Instant at,
            java.util.function.Consumer<AskedItem> mayAnswer) {
        Turn turn = desk.turn(projectId, stages(answers), by, at);
        Map<UUID, EvidenceFacts> papers = check.papersOf(answers);
        for (ItemAnswer answer : answers) {
            AskedItem item = turn.item(answer.item());
            mayAnswer.accept(item);
            AnswerRow row = turn.row(item).seenAt(answer.version());
            Optional<Refusal> no = check.refusal(projectId, asAsked(item, row), answer.parts(), papers)
                    .or(() -> replaced(row, answer.parts()).isEmpty() ? Optional.empty() : turn.refuseIfPassed(item));
            if (no.isPresent()) {
                return no;
            }
        }
        desk.make(turn, answers.stream().map(answer -> act(turn, answer)).toList());
        desk.told(turn);
        return Optional.empty();
    }

    private static Act act(Turn turn, ItemAnswer answer) {
        AskedItem item = turn.item(answer.item());
        AnswerRow before = turn.row(item);
        return new Act(
                item,
                before,
                before.answered(),
                replaced(before, answer.parts()),
                answer.parts(),
                "gate.answered",
                GateLines.answered(asAsked(item, before), answer.parts()));
    }

    /** A branch manager lets an item go. Never a safety item. */
    public Optional<Refusal> waive(UUID projectId, String code, long version, String reason) {
        roles.require(projectId, May.WAIVE);
        return waiveUnchecked(projectId, code, version, reason, access.actor(), clock.instant());
    }

    /** As {@link #waive} for work in the background. */
    public Optional<Refusal> waiveUnchecked(
            UUID projectId, String code, long version, String reason, Actor by, Instant at) {
        Turn turn = desk.turn(projectId, List.of(AskedItem.stageOf(code)), by, at);
        AskedItem item = turn.item(code);
        Optional<Refusal> no = AnswerRow.whyNeverWaived(item)
                .map(never -> new Refusal("reason", never))
                .or(() -> noReason(reason))
                .or(() -> turn.refuseIfPassed(item));
        return no.isPresent()
                ? no
                : stand(
                        turn,
                        item,
                        version,
                        "gate.waived",
                        "Waived: “" + item.words() + "”. Reason: " + reason.strip(),
                        row -> row.waived(item, reason.strip(), by.name(), at));
    }

    /** A conditional item is not asked of this site after all. */
    public Optional<Refusal> doesNotApply(UUID projectId, String code, long version, String reason) {
        UUID branchId = roles.require(projectId, May.ANSWER_GATE_ITEM);
        Turn turn = turn(projectId, code);
        AskedItem item = turn.item(code);
        roles.requireItem(branchId, item);
        if (item.condition().to(turn.facts()) != Condition.Applies.ASK && !roles.may(branchId, May.PASS_GATE)) {
            throw new NotForYourRole(May.PASS_GATE);
        }
        return doesNotApply(turn, item, version, reason);
    }

    /** As {@link #doesNotApply(UUID, String, long, String)} for work in the background. */
    public Optional<Refusal> doesNotApplyUnchecked(
            UUID projectId, String code, long version, String reason, Actor by, Instant at) {
        Turn turn = desk.turn(projectId, List.of(AskedItem.stageOf(code)), by, at);
        return doesNotApply(turn, turn.item(code), version, reason);
    }

    private Optional<Refusal> doesNotApply(Turn turn, AskedItem item, long version, String reason) {
        Optional<Refusal> no = whyItApplies(turn, item)
                .map(sentence -> new Refusal("reason", sentence))
                .or(() -> noReason(reason))
                .or(() -> turn.refuseIfPassed(item));
        return no.isPresent()
                ? no
                : stand(
                        turn,
                        item,
                        version,
                        "gate.notapplicable",
                        "Does not apply: “" + item.words() + "”, because " + reason.strip(),
                        row -> row.notApplicable(reason.strip(), turn.by().name(), turn.at()));
    }

    private static Optional<String> whyItApplies(Turn turn, AskedItem item) {
        if (item.condition().isEverywhere()) {
            return Optional.of("“" + item.words() + "” is asked of every project.");
        }
        boolean dataSaySo = item.condition().to(turn.facts()) == Condition.Applies.YES;
        return item.safety() && dataSaySo
                ? Optional.of("This site has: " + item.condition().words()
                        + ". If that is wrong, correct the project's site and contract.")
                : Optional.empty();
    }

    private Optional<Refusal> stand(
            Turn turn,
            AskedItem item,
            long version,
            String kind,
            String sentence,
            java.util.function.UnaryOperator<AnswerRow> act) {
        AnswerRow before = turn.row(item).seenAt(version);
        desk.make(turn, List.of(new Act(item, before, act.apply(before), List.of(), List.of(), kind, sentence)));
        desk.told(turn);
        return Optional.empty();
    }

    /** Says on whom an item waits and until when they promised it; nobody and null take that back. */
    public Optional<Refusal> waitsOn(
            UUID projectId, String code, long version, String whom, @Nullable LocalDate promisedOn) {
        UUID branchId = roles.require(projectId, May.ANSWER_GATE_ITEM);
        Turn turn = turn(projectId, code);
        AskedItem item = turn.item(code);
        roles.requireItem(branchId, item);
        if (whom.isBlank() && promisedOn != null) {
            return Optional.of(new Refusal("waitsOn", "Write who promised it."));
        }
        if (whom.length() > 120) {
            return Optional.of(new Refusal("waitsOn", "Write at most 120 letters."));
        }
        String on = whom.isBlank() ? null : whom.strip();
        return stand(
                turn,
                item,
                version,
                "gate.waiting",
                GateLines.waits(item, on, promisedOn),
                row -> row.waiting(on, promisedOn));
    }

    /** Everything given at the item ends, and it is asked anew; what was given stays kept. */
    public Optional<Refusal> reopen(UUID projectId, String code, long version, String reason) {
        UUID branchId = roles.require(projectId, May.ANSWER_GATE_ITEM);
        Turn turn = turn(projectId, code);
        AskedItem item = turn.item(code);
        AnswerRow before = mine(branchId, turn, item, version);
        Optional<Refusal> no = noReason(reason).or(() -> turn.refuseIfPassed(item));
        if (no.isEmpty()) {
            // Without the row before: the words of now are asked.
            AnswerRow none = AnswerRow.none(before.id());
            String sentence = "Asked anew: “" + item.words() + "”. Reason: " + reason.strip();
            desk.make(
                    turn,
                    List.of(new Act(
                            item, none, before.reopened(), before.parts(), List.of(), "gate.reopened", sentence)));
            desk.told(turn);
        }
        return no;
    }

    /** Undoes the newest act on an item within 24 hours: what it gave ends, what it replaced holds again. */
    public Optional<Refusal> undo(UUID projectId, String code, long version) {
        UUID branchId = roles.require(projectId, May.ANSWER_GATE_ITEM);
        Turn turn = turn(projectId, code);
        AskedItem item = turn.item(code);
        AnswerRow before = mine(branchId, turn, item, version);
        Optional<Refusal> no = tooLate(turn, before).or(() -> turn.refuseIfPassed(item));
        if (no.isEmpty()) {
            undo(turn, item, before);
            desk.told(turn);
        }
        return no;
    }

    private static Optional<Refusal> tooLate(Turn turn, AnswerRow row) {
        Instant actedAt = row.lastActAt();
        return actedAt == null || actedAt.plus(UNDO_FOR).isBefore(turn.at())
                ? Optional.of(Refusal.ofForm("An answer can be undone for 24 hours. Ask the item anew, with a reason."))
                : Optional.empty();
    }

    private void undo(Turn turn, AskedItem item, AnswerRow before) {
        boolean wasGiven = before.stand() == AnswerRow.Stand.ASKED;
        AnswerRow after = before.answered();
        List<AnswerPart> ended = wasGiven ? parts(before, part -> part.since() == before.version()) : List.of();
        String sentence = "Undone: “" + item.words() + "”.";
        desk.make(turn, List.of(new Act(item, before, after, ended, List.of(), "gate.undone", sentence)));
        if (wasGiven) {
            desk.revive(after, before.version());
        }
    }

    /** The row as it was seen, for somebody who may take back what stands there. */
    private AnswerRow mine(UUID branchId, Turn turn, AskedItem item, long version) {
        roles.requireItem(branchId, item);
        AnswerRow row = turn.row(item).seenAt(version);
        requireWaiver(branchId, row);
        return row;
    }

    private void requireWaiver(UUID branchId, AnswerRow row) {
        if (row.stand() == AnswerRow.Stand.WAIVED && !roles.may(branchId, May.WAIVE)) {
            throw new NotForYourRole(May.WAIVE);
        }
    }

    private Turn turn(UUID projectId, String code) {
        return desk.turn(projectId, List.of(AskedItem.stageOf(code)), access.actor(), clock.instant());
    }

    private static List<Stage> stages(List<ItemAnswer> answers) {
        return answers.stream()
                .map(answer -> AskedItem.stageOf(answer.item()))
                .distinct()
                .toList();
    }

    private static AskedItem asAsked(AskedItem now, AnswerRow row) {
        return row.asked() != null && !row.parts().isEmpty() ? row.asked() : now;
    }

    /** A tick, a date and a reading of the same label take the place of the one before; papers are added. */
    private static List<AnswerPart> replaced(AnswerRow row, List<Given> parts) {
        return parts(row, part -> parts.stream().anyMatch(given -> replaces(given, part)));
    }

    private static boolean replaces(Given given, AnswerPart part) {
        if (given.kind() != part.kind() || given instanceof Given.Kept) {
            return false;
        }
        return !(given instanceof Given.Read read) || read.label().strip().equalsIgnoreCase(part.label());
    }

    private static List<AnswerPart> parts(AnswerRow row, Predicate<AnswerPart> which) {
        return row.parts().stream().filter(which).collect(Collectors.toList());
    }

    private static Optional<Refusal> noReason(String reason) {
        if (reason.isBlank()) {
            return Optional.of(new Refusal("reason", "Write the reason: it stands in the journal."));
        }
        return reason.length() <= MOST_LETTERS
                ? Optional.empty()
                : Optional.of(new Refusal("reason", "Write at most 500 letters."));
    }
}
