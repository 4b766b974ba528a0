package org.plumbrow.project.gate;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.database.Ids;
import org.plumbrow.project.Journal;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.project.Stage;
import org.plumbrow.web.Actor;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Component;

/** Where every act on an item is made: in turn, with its journal line, and told to the list at the end. */
@Component
class GateDesk {

    private final AnswerRows rows;
    private final GateTemplates templates;
    private final Projects projects;
    private final Journal journal;
    private final Gates gates;

    GateDesk(AnswerRows rows, GateTemplates templates, Projects projects, Journal journal, Gates gates) {
        this.rows = rows;
        this.templates = templates;
        this.projects = projects;
        this.journal = journal;
        this.gates = gates;
    }

    /** One person's turn at a project: nobody else changes anything of its gates meanwhile. */
    record Turn(ProjectFacts facts, List<AskedItem> asked, Map<String, AnswerRow> answered, Actor by, Instant at) {

        UUID projectId() {
            return facts.id();
        }

        /** @throws NotFound if the branch asks no such item, and nobody has answered it here */
        AskedItem item(String code) {
            return asked.stream()
                    .filter(item -> item.code().equals(code))
                    .findFirst()
                    .or(() -> Optional.ofNullable(answered.get(code)).map(AnswerRow::asked))
                    .orElseThrow(() -> new NotFound(code));
        }

        AnswerRow row(AskedItem item) {
            return answered.computeIfAbsent(item.code(), code -> AnswerRow.none(Ids.next()));
        }

        Optional<Refusal> refuseIfPassed(AskedItem item) {
            Stage stage = item.stage();
            return stage.isReachedAt(facts.stage())
                    ? Optional.of(Refusal.ofForm("The gate to " + GateBook.label(stage)
                            + " was passed with this answer. Go back before it, then change it."))
                    : Optional.empty();
        }
    }

    Turn turn(UUID projectId, List<Stage> stages, Actor by, Instant at) {
        journal.inTurn(projectId);
        ProjectFacts facts = projects.factsUnchecked(projectId);
        return new Turn(facts, templates.asked(facts.branchId()), rows.of(projectId, stages), by, at);
    }

    /**
     * One act on one item.
     *
     * @param before the row whose words are kept as long as an answer holds
     */
    record Act(
            AskedItem item,
            AnswerRow before,
            AnswerRow after,
            List<AnswerPart> ended,
            List<Given> given,
            String kind,
            String sentence) {

        private AskedItem asked() {
            return before.asked() != null && !before.parts().isEmpty() ? before.asked() : item;
        }

        private JournalEvent line(UUID projectId) {
            Map<String, String> facts = Map.of("item", item.code(), "version", Long.toString(after.version()));
            return JournalEvent.of(projectId, kind, sentence, facts);
        }
    }

    /** What stands from now on at these items, each with its line in the journal. */
    void make(Turn turn, List<Act> acts) {
        UUID branchId = turn.facts().branchId();
        rows.write(
                branchId,
                turn.projectId(),
                acts.stream()
                        .map(act -> new AnswerRows.Written(act.asked(), act.after))
                        .toList());
        acts.forEach(act -> rows.end(act.ended, act.after.version()));
        List<AnswerRows.Part> parts = acts.stream()
                .flatMap(act -> act.given.stream().map(given -> new AnswerRows.Part(act.after, given)))
                .toList();
        rows.add(branchId, turn.projectId(), parts, turn.by(), turn.at());
        journal.append(acts.stream().map(act -> act.line(turn.projectId())).toList(), turn.by(), turn.at());
    }

    void revive(AnswerRow after, long endedBy) {
        rows.revive(after.id(), endedBy);
    }

    void told(Turn turn) {
        gates.lookAgain(turn.facts, turn.asked);
    }
}
