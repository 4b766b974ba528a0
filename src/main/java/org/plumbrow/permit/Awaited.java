package org.plumbrow.permit;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One thing that a project waits for.
 *
 * @param about what more precisely: "trench", "switchboard"; may be empty
 * @param waitCode row of the branch's table of waits
 * @param owedName of a supplier or whoever is not in the settings; of utility and office as the settings call them
 * @param sentOn asked for; null while it is not
 * @param dueOn when we need it @param expiresOn last day on which it counts
 * @param result of inspections and locates only
 * @param paperId the document among the project's papers
 */
public record Awaited(
        UUID id,
        long version,
        UUID projectId,
        AwaitedKind kind,
        String waitCode,
        String about,
        OwedBy owedBy,
        @Nullable UUID utilityId,
        @Nullable UUID permitOfficeId,
        String owedName,
        @Nullable LocalDate sentOn,
        @Nullable LocalDate promisedOn,
        @Nullable LocalDate dueOn,
        @Nullable LocalDate expiresOn,
        @Nullable LocalDate receivedOn,
        @Nullable WaitResult result,
        @Nullable UUID paperId,
        String note) {

    public boolean isOpen() {
        return receivedOn == null;
    }

    /** It came, and is no refusal. */
    public boolean isGood() {
        return !isOpen() && (result == null || result.isGood());
    }

    /** Whether the other is the same question, asked later. */
    public boolean isAskedAgainBy(Awaited other) {
        return other.kind == kind
                && other.about.equals(about)
                && other.sentOn != null
                && (sentOn == null || other.sentOn.isAfter(sentOn));
    }

    public String what() {
        return about.isEmpty() ? kind.words() : kind.words() + ", " + about;
    }

    public String who() {
        return owedName.isEmpty() ? owedBy.words() : owedName;
    }

    /** By when it should be here: as promised, else as needed. */
    public Optional<LocalDate> shouldComeOn() {
        return Optional.ofNullable(promisedOn == null ? dueOn : promisedOn);
    }

    public boolean isOverdue(LocalDate today) {
        return isOpen() && shouldComeOn().filter(today::isAfter).isPresent();
    }

    public boolean hasExpired(LocalDate today) {
        return expiresOn != null && expiresOn.isBefore(today);
    }

    /** Whether marks of this ticket may be relied on that day, as far as papers say: clear, answered, not expired. */
    public boolean isClearOn(LocalDate day) {
        return kind == AwaitedKind.LOCATE
                && result == WaitResult.CLEAR
                && receivedOn != null
                && !day.isBefore(receivedOn)
                && !hasExpired(day);
    }
}
