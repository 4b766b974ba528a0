package org.plumbrow.project;

import java.util.Map;
import java.util.UUID;

/**
 * Something that happened to a project. A room may have records of its own that implement this.
 * Neither sentence nor facts hold a customer's name, phone or address: name the row's id instead.
 */
public interface JournalEvent {

    UUID projectId();

    /** Lower-case word of the trade with the room before it: {@code gate.passed}, {@code outage.moved}. */
    String kind();

    /** What a colleague reads: "Gate passed: surveyed." */
    String sentence();

    /** What a program reads: names and values, {@code name.from} and {@code name.to} for a change. Never a null value. */
    default Map<String, String> facts() {
        return Map.of();
    }

    static JournalEvent of(UUID projectId, String kind, String sentence, Map<String, String> facts) {
        return new Plain(projectId, kind, sentence, facts);
    }

    static JournalEvent of(UUID projectId, String kind, String sentence) {
        return of(projectId, kind, sentence, Map.of());
    }

    /** An event without a type of its own. */
    record Plain(UUID projectId, String kind, String sentence, Map<String, String> facts) implements JournalEvent {}
}
