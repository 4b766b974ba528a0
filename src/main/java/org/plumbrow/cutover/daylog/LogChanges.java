package org.plumbrow.cutover.daylog;

import java.time.Instant;
import java.time.LocalTime;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.cutover.daylog.LogPen.Said;
import org.springframework.stereotype.Service;

/** Putting right what stands in the log: the first entry stays, the change stands beside it with its reason. */
@Service
class LogChanges {

    private static final int MOST_REASON = 300;
    private static final int MOST_NOTE = 1000;

    private final LogPen pen;

    LogChanges(LogPen pen) {
        this.pen = pen;
    }

    /**
     * @param of the entry that is wrong
     * @param at the right time; null to leave it
     * @param value the right value of a reading, or who did the step; null or empty to leave it
     * @param seen how often it had been changed when the page was opened
     */
    record Correction(
            UUID entryId,
            UUID of,
            @Nullable LocalTime at,
            @Nullable String value,
            String reason,
            long seen) {

        /** By whoever has not looked at earlier changes. */
        Correction(UUID entryId, UUID of, @Nullable LocalTime at, @Nullable String value, String reason) {
            this(entryId, of, at, value, reason, LogReversal.ANY);
        }
    }

    Said correct(UUID projectId, Correction correction) {
        return pen.write(projectId, correction.entryId(), writing -> correct(writing, correction));
    }

    private Said correct(Writing writing, Correction correction) {
        Optional<LogEntry> entry = writing.state().entry(correction.of()).filter(LogChanges::isCorrectable);
        if (entry.isEmpty() || writing.state().isTakenBack(correction.of())) {
            return Said.meanwhile("", "This entry was taken back, or is of a kind that is not corrected.");
        }
        if (correction.seen() != LogReversal.ANY
                && correction.seen()
                        != writing.state().changesOf(correction.of()).size()) {
            return Said.meanwhile("", "Somebody else changed this entry meanwhile.");
        }
        if (isNoReason(correction.reason())) {
            return Said.refused("reason", "Write why, 1 to 300 characters. Both times stay in the log.");
        }
        return correct(writing, correction, entry.get());
    }

    private Said correct(Writing writing, Correction correction, LogEntry entry) {
        Instant at = correction.at() == null ? standing(writing, entry) : writing.at(correction.at());
        if (writing.isToCome(at)) {
            return Said.refused("at", writing.clock(at) + " is still to come. Write a time that has passed.");
        }
        String value = correction.value() == null ? "" : correction.value().strip();
        if (value.isEmpty()) {
            return corrected(writing, correction, entry, null, at);
        }
        return switch (entry.kind()) {
            case READING -> correctValue(writing, correction, entry, at);
            case DONE ->
                value.length() > LogSteps.MOST_NAME
                        ? Said.refused("value", LogSteps.NAME_TOO_LONG)
                        : corrected(writing, correction, entry, value, at);
            default -> corrected(writing, correction, entry, null, at);
        };
    }

    private static Said correctValue(Writing writing, Correction correction, LogEntry entry, Instant at) {
        String typed = correction.value() == null ? "" : correction.value();
        Optional<Asked> asked = writing.readings().of(entry.step()).stream()
                .filter(one -> one.quantity().equals(entry.quantity()))
                .findFirst();
        if (asked.isEmpty()) {
            return Said.refused("value", "This reading is not asked for any more.");
        }
        return asked.get()
                .refuse(typed)
                .map(sentence -> Said.refused("value", sentence))
                .orElseGet(
                        () -> corrected(writing, correction, entry, asked.get().kept(typed), at));
    }

    private static Said corrected(
            Writing writing, Correction correction, LogEntry entry, @Nullable String value, Instant at) {
        writing.change(
                correction.entryId(),
                entry,
                EntryKind.CORRECTED,
                value,
                correction.reason().strip(),
                at);
        return Said.stored("an entry of " + title(writing, entry) + " is corrected, " + writing.clock(at) + ". "
                + correction.reason().strip());
    }

    private static String title(Writing writing, LogEntry entry) {
        return writing.state().step(entry.step()).title().toLowerCase(java.util.Locale.ROOT);
    }

    /** A correction that leaves the time leaves the one that counts now. */
    private static Instant standing(Writing writing, LogEntry entry) {
        return writing.state().changesOf(entry.id()).stream()
                .filter(change -> change.kind() == EntryKind.CORRECTED)
                .reduce((earlier, later) -> later)
                .map(LogEntry::happenedAt)
                .orElse(entry.happenedAt());
    }

    private static boolean isCorrectable(LogEntry entry) {
        return switch (entry.kind()) {
            case DONE, READING, SIGNED, REVERSE, POWER_ON -> true;
            default -> false;
        };
    }

    /** Takes a tap back, as long as no hold point behind it is signed: others have relied on it. */
    Said takeBack(UUID projectId, UUID entryId, UUID of, String reason) {
        return pen.write(
                projectId,
                entryId,
                writing -> writing.state()
                        .entry(of)
                        .filter(LogChanges::isTakeable)
                        .filter(entry -> !writing.state().isTakenBack(of)
                                && !writing.log().isClosed())
                        .map(entry -> takeBack(writing, entryId, entry, reason))
                        .orElseGet(() -> Said.refused("", "This entry cannot be taken back.")));
    }

    private static Said takeBack(Writing writing, UUID entryId, LogEntry entry, String reason) {
        Optional<LogStep> hold =
                entry.kind() == EntryKind.DONE ? writing.state().signedHoldAfter(entry.step()) : Optional.empty();
        if (hold.isPresent()) {
            return Said.refused(
                    "",
                    "Hold point " + hold.get().code()
                            + " is signed: people have relied on this step. Correct its time, or reverse.");
        }
        if (entry.kind() == EntryKind.REVERSE && writing.state().powerOnAt().isPresent()) {
            return Said.refused("", LogReversal.POWER_IS_BACK);
        }
        if (isNoReason(reason)) {
            return Said.refused("reason", "Write why, 1 to 300 characters. The entry stays in the log.");
        }
        writing.change(entryId, entry, EntryKind.TAKEN_BACK, null, reason.strip(), writing.now());
        return Said.stored("an entry of " + title(writing, entry) + " is taken back. " + reason.strip());
    }

    private static boolean isTakeable(LogEntry entry) {
        return entry.kind() == EntryKind.DONE || entry.kind() == EntryKind.REVERSE;
    }

    /** "Something is wrong": kept at the step at which one stands. */
    Said wrong(UUID projectId, UUID entryId, String text) {
        return pen.write(projectId, entryId, writing -> {
            if (text.isBlank() || text.strip().length() > MOST_NOTE) {
                return Said.refused("text", "Write what is wrong, 1 to 1,000 characters.");
            }
            String step = writing.state().current().map(LogStep::code).orElse(Procedure.LAST);
            writing.about(entryId, step, EntryKind.WRONG, text.strip(), null, writing.now());
            return Said.stored("something is wrong. " + text.strip());
        });
    }

    static boolean isNoReason(String reason) {
        return reason.isBlank() || reason.strip().length() > MOST_REASON;
    }
}
