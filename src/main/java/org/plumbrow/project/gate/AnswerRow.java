package org.plumbrow.project.gate;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.web.EditedMeanwhile;

/**
 * What is kept of one item of one project. Each act gives the row as it stands afterwards, with its next version.
 *
 * @param version 0 while there is no row
 * @param asked what was asked when it was answered; null while there is no row
 * @param reason why it was waived or does not apply
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

    AnswerRow with(List<AnswerPart> held) {
        return new AnswerRow(id, version, asked, stand, reason, standBy, standAt, waitsOn, promisedOn, held);
    }

    /** @throws EditedMeanwhile if somebody acted on it after it was seen */
    AnswerRow seenAt(long seen) {
        EditedMeanwhile.check(seen, version);
        return this;
    }

    /** Something was given: whatever stood in place of an answer goes. */
    AnswerRow answered() {
        return new AnswerRow(id, version + 1, asked, Stand.ASKED, null, null, null, null, null, parts);
    }

    /** Nothing is asked of it any more, or again. */
    AnswerRow reopened() {
        return new AnswerRow(id, version + 1, asked, Stand.ASKED, null, null, null, null, null, List.of());
    }

    AnswerRow waiting(@Nullable String on, @Nullable LocalDate promised) {
        return new AnswerRow(id, version + 1, asked, stand, reason, standBy, standAt, on, promised, parts);
    }

    /** Why this item can never be waived; empty when it can. */
    static Optional<String> whyNeverWaived(AskedItem item) {
        return item.safety()
                ? Optional.of("“" + item.words() + "” cannot be waived: it protects people, animals or equipment.")
                : Optional.empty();
    }

    /** @throws IllegalArgumentException for a safety item: a caller's bug, the person has been told before */
    AnswerRow waived(AskedItem item, String why, String by, Instant at) {
        whyNeverWaived(item).ifPresent(never -> {
            throw new IllegalArgumentException(never);
        });
        return standing(Stand.WAIVED, why, by, at);
    }

    AnswerRow notApplicable(String why, String by, Instant at) {
        return standing(Stand.NOT_APPLICABLE, why, by, at);
    }

    private AnswerRow standing(Stand to, String why, String by, Instant at) {
        return new AnswerRow(id, version + 1, asked, to, why, by, at, null, null, parts);
    }

    /** When the act that made this version happened; null for an act that leaves no trace to undo. */
    @Nullable
    Instant lastActAt() {
        if (standAt != null) {
            return standAt;
        }
        return parts.stream()
                .filter(part -> part.since() == version)
                .map(AnswerPart::at)
                .findFirst()
                .orElse(null);
    }
}
