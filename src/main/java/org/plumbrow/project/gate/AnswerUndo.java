package org.plumbrow.project.gate;

import java.time.Clock;
import java.util.Optional;
import java.util.Set;
import org.plumbrow.project.JournalLine;
import org.plumbrow.project.JournalUndo;
import org.springframework.stereotype.Component;

/**
 * The opposite act of an answer. Whether it is still the newest act at its item is seen when it is done: the line names
 * the version that it made.
 */
@Component
class AnswerUndo implements JournalUndo {

    private static final Set<String> KINDS = Set.of("gate.answered", "gate.waived", "gate.notapplicable");

    private final Clock clock;

    AnswerUndo(Clock clock) {
        this.clock = clock;
    }

    @Override
    public Optional<String> action(JournalLine line) {
        boolean fits = KINDS.contains(line.kind())
                && line.at().plus(GateAnswers.UNDO_FOR).isAfter(clock.instant());
        return fits
                ? Optional.of("/projects/" + line.projectId() + "/gate-items/"
                        + line.facts().get("item") + "/undo?version="
                        + line.facts().get("version"))
                : Optional.empty();
    }
}
