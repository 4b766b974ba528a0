package org.plumbrow.project.gate;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
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
        rows.inTurn(projectId);
        ProjectFacts facts = projects.factsUnchecked(projectId);
        return new Turn(facts, templates.asked(facts.branchId()), rows.of(projectId, stages), by, at);
    }

    /** What stands from now on: with the words of now, unless an answer holds that was asked in other words. */
    AnswerRow write(Turn turn, AskedItem item, AnswerRow before, AnswerRow after) {
        AskedItem asked = before.asked() != null && !before.parts().isEmpty() ? before.asked() : item;
        rows.write(turn.facts().branchId(), turn.projectId(), asked, after);
        return after;
    }

    void give(Turn turn, AnswerRow after, List<AnswerPart> replaced, List<Given> parts) {
        rows.end(replaced, after.version());
        for (Given given : parts) {
            rows.add(turn.facts().branchId(), turn.projectId(), after, given, turn.by(), turn.at());
        }
    }

    void end(List<AnswerPart> parts, AnswerRow after) {
        rows.end(parts, after.version());
    }

    void revive(AnswerRow after, long endedBy) {
        rows.revive(after.id(), endedBy);
    }

    void line(Turn turn, String kind, AskedItem item, AnswerRow after, String sentence) {
        Map<String, String> facts = new TreeMap<>();
        facts.put("item", item.code());
        facts.put("version", Long.toString(after.version()));
        journal.append(JournalEvent.of(turn.projectId(), kind, sentence, facts), turn.by(), turn.at());
    }

    void told(UUID projectId) {
        gates.lookAgain(projectId);
    }
}
