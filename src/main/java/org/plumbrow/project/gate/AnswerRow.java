package org.plumbrow.project.gate;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What is kept of one item of one project.
 *
 * @param version 0 while there is no row
 * @param asked what was asked when it was answered; null while there is no row
 * @param parts those that hold
 */
record AnswerRow(
        UUID id,
        long version,
        @Nullable AskedItem asked,
        Stand stand,
        @Nullable String reason,
        @Nullable String standBy,
        @Nullable Instant standAt,
        @Nullable String waitsOn,
        @Nullable LocalDate promisedOn,
        List<AnswerPart> parts) {

    enum Stand {
        ASKED,
        WAIVED,
        NOT_APPLICABLE
    }

    /** Not answered yet. */
    static AnswerRow none(UUID id) {
        return new AnswerRow(id, 0, null, Stand.ASKED, null, null, null, null, null, List.of());
    }

    /** Whether it holds anything: then the words that were asked stay. */
    boolean isAnswered() {
        return stand != Stand.ASKED || !parts.isEmpty();
    }

    int count(AnswerKind kind) {
        return (int) parts.stream().filter(part -> part.kind() == kind).count();
    }

    AnswerRow with(List<AnswerPart> parts) {
        return new AnswerRow(id, version, asked, stand, reason, standBy, standAt, waitsOn, promisedOn, parts);
    }
}
