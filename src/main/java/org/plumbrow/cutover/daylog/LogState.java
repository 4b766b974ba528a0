package org.plumbrow.cutover.daylog;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What the entries of a log say together: what is taken back does not count, a correction takes the place of what it corrects. */
final class LogState {

    private final List<LogStep> steps;
    private final List<LogEntry> entries;
    private final List<Effective> effective;

    LogState(List<LogStep> steps, List<LogEntry> entries) {
        this.steps = steps.stream()
                .sorted(Comparator.comparingInt(LogStep::position))
                .toList();
        this.entries = entries.stream()
                .sorted(Comparator.comparing(LogEntry::storedAt)
                        .thenComparing(LogEntry::device)
                        .thenComparing(LogEntry::number))
                .toList();
        this.effective = effective(this.entries);
    }

    /** An entry as it counts now: with its last correction. */
    record Effective(LogEntry entry, Instant at, @Nullable String value, Optional<LogEntry> correction) {}

    private static List<Effective> effective(List<LogEntry> entries) {
        Set<UUID> takenBack = entries.stream()
                .filter(entry -> entry.kind() == EntryKind.TAKEN_BACK)
                .map(LogEntry::corrects)
                .collect(Collectors.toCollection(HashSet::new));
        Map<UUID, LogEntry> corrections = new HashMap<>();
        entries.stream()
                .filter(entry -> entry.kind() == EntryKind.CORRECTED)
                .forEach(entry -> corrections.put(entry.corrects(), entry));
        return entries.stream()
                .filter(entry -> entry.kind() != EntryKind.TAKEN_BACK && entry.kind() != EntryKind.CORRECTED)
                .filter(entry -> !takenBack.contains(entry.id()))
                .map(entry -> with(entry, Optional.ofNullable(corrections.get(entry.id()))))
                .toList();
    }

    private static Effective with(LogEntry entry, Optional<LogEntry> correction) {
        return new Effective(
                entry,
                correction.map(LogEntry::happenedAt).orElse(entry.happenedAt()),
                correction.map(LogEntry::value).orElse(entry.value()),
                correction);
    }

    List<LogStep> steps() {
        return steps;
    }

    LogStep step(String code) {
        return steps.stream()
                .filter(step -> step.code().equals(code))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no step " + code));
    }

    Optional<LogEntry> entry(UUID id) {
        return entries.stream().filter(entry -> entry.id().equals(id)).findFirst();
    }

    /** Corrections and what was taken back of one entry, in their order. */
    List<LogEntry> changesOf(UUID id) {
        return entries.stream().filter(entry -> id.equals(entry.corrects())).toList();
    }

    boolean isTakenBack(UUID id) {
        return changesOf(id).stream().anyMatch(change -> change.kind() == EntryKind.TAKEN_BACK);
    }

    List<LogEntry> entriesOf(String step) {
        return entries.stream().filter(entry -> entry.step().equals(step)).toList();
    }

    List<Effective> of(String step, EntryKind kind) {
        return effective.stream()
                .filter(one -> one.entry().step().equals(step) && one.entry().kind() == kind)
                .toList();
    }

    List<Effective> of(EntryKind kind) {
        return effective.stream().filter(one -> one.entry().kind() == kind).toList();
    }

    private Optional<Effective> last(EntryKind kind) {
        List<Effective> all = of(kind);
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
    }

    /** The first of the entries that say so. */
    Optional<Instant> doneAt(String step) {
        return of(step, EntryKind.DONE).stream().map(Effective::at).min(Comparator.naturalOrder());
    }

    /**
     * Read last for this quantity in this step. What was read when the utility closed says nothing of the next closing, on
     * the way back.
     */
    Optional<Effective> reading(String step, String quantity) {
        List<Effective> counted = step.equals(Procedure.UTILITY_CLOSES) ? sinceReversed() : effective;
        List<Effective> all = counted.stream()
                .filter(one -> one.entry().step().equals(step) && one.entry().kind() == EntryKind.READING)
                .filter(one -> quantity.equals(one.entry().quantity()))
                .toList();
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
    }

    /** In the order in which the log got them; everything while nothing is reversed. */
    private List<Effective> sinceReversed() {
        List<Effective> begun = of(EntryKind.REVERSE);
        return begun.isEmpty() ? effective : effective.subList(effective.indexOf(begun.get(0)), effective.size());
    }

    Optional<String> value(String step, String quantity) {
        return reading(step, quantity).flatMap(one -> Optional.ofNullable(one.value()));
    }

    /** Somebody has read it twice and says that it stays. */
    boolean stays(UUID readingId) {
        return effective.stream()
                .anyMatch(one -> one.entry().kind() == EntryKind.STAYS
                        && readingId.equals(one.entry().corrects()));
    }

    /** Why a reading outside its limits stays. */
    Optional<String> whyItStays(UUID readingId) {
        return effective.stream()
                .map(Effective::entry)
                .filter(entry -> entry.kind() == EntryKind.STAYS && readingId.equals(entry.corrects()))
                .flatMap(entry -> Stream.ofNullable(entry.reason()))
                .reduce((earlier, later) -> later);
    }

    List<Effective> signatures(Hold hold) {
        return of(hold.name(), EntryKind.SIGNED);
    }

    /** The parts whose signature is still missing. */
    List<Hold.Part> unsigned(Hold hold) {
        Set<Hold.Part> signed = signatures(hold).stream()
                .map(one -> one.entry().signature())
                .filter(java.util.Objects::nonNull)
                .map(LogEntry.Signature::part)
                .collect(Collectors.toSet());
        return hold.parts().stream().filter(part -> !signed.contains(part)).toList();
    }

    /** When the last of the signatures that it takes was given. */
    Optional<Instant> signedAt(Hold hold) {
        return unsigned(hold).isEmpty()
                ? signatures(hold).stream().map(Effective::at).max(Comparator.naturalOrder())
                : Optional.empty();
    }

    boolean isPassed(LogStep step) {
        return !step.applies()
                || (step.hold()
                        ? signedAt(Hold.valueOf(step.code())).isPresent()
                        : doneAt(step.code()).isPresent());
    }

    /** The step at which one stands; empty when all are done. */
    Optional<LogStep> current() {
        return steps.stream().filter(step -> !isPassed(step)).findFirst();
    }

    /** The next hold point that is not signed yet. */
    Optional<LogStep> nextHold() {
        return steps.stream()
                .filter(LogStep::hold)
                .filter(step -> !isPassed(step))
                .findFirst();
    }

    /** The first hold point before this step that is not signed. */
    Optional<LogStep> holdBefore(String code) {
        int position = step(code).position();
        return steps.stream()
                .filter(step -> step.hold() && step.position() < position && !isPassed(step))
                .findFirst();
    }

    /** A signed hold point after this step, so that the step can no longer be taken back. */
    Optional<LogStep> signedHoldAfter(String code) {
        int position = step(code).position();
        return steps.stream()
                .filter(step -> step.hold()
                        && step.position() >= position
                        && !signatures(Hold.valueOf(step.code())).isEmpty())
                .findFirst();
    }

    Optional<Instant> powerOffAt() {
        return doneAt(Procedure.POWER_OFF);
    }

    Optional<Instant> reversedAt() {
        return of(EntryKind.REVERSE).stream().map(Effective::at).min(Comparator.naturalOrder());
    }

    /** Of the reversal that stands: the reason of one that was taken back says nothing of the next. */
    Optional<String> reverseReason() {
        return last(EntryKind.REVERSE)
                .flatMap(reversed -> last(EntryKind.REVERSE_REASON)
                        .filter(reason ->
                                reason.entry().number() > reversed.entry().number()))
                .map(Effective::value);
    }

    /** When the outage ended: the customer's signature at H5, or the power back on after a reversal. */
    Optional<Instant> powerOnAt() {
        return reversedAt().isPresent() ? last(EntryKind.POWER_ON).map(Effective::at) : signedAt(Hold.H5);
    }

    /** Minutes without power, from minute to minute as the log shows them; empty while it is not over. */
    OptionalInt outageMinutes() {
        if (powerOffAt().isEmpty() || powerOnAt().isEmpty()) {
            return OptionalInt.empty();
        }
        return OptionalInt.of((int) Duration.between(
                        powerOffAt().get().truncatedTo(ChronoUnit.MINUTES),
                        powerOnAt().get().truncatedTo(ChronoUnit.MINUTES))
                .toMinutes());
    }

    Optional<ReversalTime> reversal() {
        return last(EntryKind.REVERSAL_TIME).map(ReversalTime::of);
    }
}
