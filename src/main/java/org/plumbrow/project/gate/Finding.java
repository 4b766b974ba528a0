package org.plumbrow.project.gate;

import java.util.Set;

/** What a rule found. The sentence is what a colleague would say: with the values and their limits. */
public sealed interface Finding {

    String sentence();

    record Satisfied(String sentence) implements Finding {}

    /**
     * In order, and what the item asks for stands in the room's own data (a log, a sheet): nobody gives it a second time.
     *
     * @param holds the kinds of answer that stand there
     */
    record Recorded(String sentence, Set<AnswerKind> holds) implements Finding {
        public Recorded {
            holds = Set.copyOf(holds);
        }
    }

    /** @param remedy what to do about it */
    record Broken(String sentence, String remedy) implements Finding {}

    /** @param missing the figures or papers that are not there yet, and who brings them */
    record CannotTell(String sentence, String missing) implements Finding {}
}
