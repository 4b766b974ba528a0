package org.plumbrow.project.gate;

/** What a rule found. The sentence is what a colleague would say: with the values and their limits. */
public sealed interface Finding {

    String sentence();

    record Satisfied(String sentence) implements Finding {}

    /** @param remedy what to do about it */
    record Broken(String sentence, String remedy) implements Finding {}

    /** @param missing the figures or papers that are not there yet, and who brings them */
    record CannotTell(String sentence, String missing) implements Finding {}
}
