package org.plumbrow.cutover.daylog;

import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.calendar.ClockWords;
import org.plumbrow.cutover.daylog.LogEntry.PhoneTime;
import org.plumbrow.web.Actor;
import org.plumbrow.web.Refusal;

/** Somebody holds the pen of one log: what it says so far, and what they add. Nothing is stored before the pen is put down. */
final class Writing {

    /** Order of the entries of one log: all are numbered by the server, also what a phone has kept. */
    static final String PAGE = "page";

    private final DayLog log;
    private final LogState state;
    private final Readings readings;
    private final Actor actor;
    private final LogMoment moment;
    private final Instant storedAt;
    private final @Nullable PhoneTap tap;
    private final List<LogEntry> added = new ArrayList<>();
    private long nextNumber;

    /**
     * @param moment when it happens: now, or when the phone was tapped
     * @param tap null when it does not come from a phone that kept it
     */
    Writing(
            DayLog log,
            LogState state,
            Readings readings,
            Actor actor,
            LogMoment moment,
            Instant storedAt,
            @Nullable PhoneTap tap,
            long nextNumber) {
        this.log = log;
        this.state = state;
        this.readings = readings;
        this.actor = actor;
        this.moment = moment;
        this.storedAt = storedAt;
        this.tap = tap;
        this.nextNumber = nextNumber;
    }

    DayLog log() {
        return log;
    }

    LogState state() {
        return state;
    }

    Readings readings() {
        return readings;
    }

    HoldRules rules() {
        return new HoldRules(state, readings);
    }

    Actor actor() {
        return actor;
    }

    /** Now; of what a phone has kept, the moment of the tap. */
    Instant now() {
        return moment.now();
    }

    /** Tapped on a phone, perhaps without signal: what was tapped there has happened. */
    boolean isFromPhone() {
        return tap != null;
    }

    /** How a reading was put right on the phone before it was sent, in its order. */
    List<PhoneTap.Fix> fixesOf(String quantity) {
        return tap == null ? List.of() : tap.fixesOf(quantity);
    }

    Instant storedAt() {
        return storedAt;
    }

    LogMoment moment() {
        return moment;
    }

    List<LogEntry> added() {
        return added;
    }

    /** The typed time on the log's day; now if none was typed. */
    Instant at(@Nullable LocalTime typed) {
        return typed == null ? now() : moment.on(typed);
    }

    /** What is wrong with a time as somebody gives it; empty when nothing is. */
    Optional<Refusal> against(@Nullable LocalTime typed) {
        if (typed == null) {
            return moment.isLater()
                    ? Optional.of(new Refusal(
                            "at", "This log tells of " + moment.dayWords() + ". Write at what time it was."))
                    : Optional.empty();
        }
        Instant at = at(typed);
        return isToCome(at)
                ? Optional.of(new Refusal("at", clock(at) + " is still to come. Write a time that has passed."))
                : Optional.empty();
    }

    boolean isToCome(Instant at) {
        return at.isAfter(now().plusSeconds(60));
    }

    String clock(Instant at) {
        return ClockWords.of(at.atZone(moment.zone()).toLocalTime());
    }

    /** @param who who did it; empty for the person who writes */
    void done(UUID id, String step, String who, Instant at) {
        add(id, step, EntryKind.DONE, null, who.isEmpty() ? null : who, null, null, null, at, null, tapped());
    }

    LogEntry reading(UUID id, String step, String quantity, String value, Instant at) {
        return add(id, step, EntryKind.READING, quantity, value, null, null, null, at, null, tapped());
    }

    void about(UUID id, String step, EntryKind kind, @Nullable String value, @Nullable String reason, Instant at) {
        add(id, step, kind, null, value, reason, null, null, at, null, tapped());
    }

    void change(UUID id, LogEntry of, EntryKind kind, @Nullable String value, @Nullable String reason, Instant at) {
        add(id, of.step(), kind, null, value, reason, of.id(), null, at, null, tapped());
    }

    /** Put right on the phone: of the same moment, with the phone's time of the correction. */
    void putRight(UUID id, LogEntry of, PhoneTap.Fix fix, String value) {
        PhoneTime corrected = Objects.requireNonNull(tap).phoneTime(fix.written(), storedAt);
        EntryKind kind = EntryKind.CORRECTED;
        add(id, of.step(), kind, null, value, fix.why(), of.id(), null, of.happenedAt(), null, corrected);
    }

    void photo(UUID id, String step, UUID evidenceId) {
        add(id, step, EntryKind.PHOTO, null, null, null, null, evidenceId, now(), null, tapped());
    }

    void sign(UUID id, Hold hold, LogEntry.Signature signature, Instant at) {
        add(id, hold.name(), EntryKind.SIGNED, null, null, null, null, null, at, signature, tapped());
    }

    /** By the phone's clock; null of what was written on a page. */
    private @Nullable PhoneTime tapped() {
        return tap == null ? null : tap.phoneTime(storedAt);
    }

    private LogEntry add(
            UUID id,
            String step,
            EntryKind kind,
            @Nullable String quantity,
            @Nullable String value,
            @Nullable String reason,
            @Nullable UUID corrects,
            @Nullable UUID evidenceId,
            Instant at,
            LogEntry.@Nullable Signature signature,
            @Nullable PhoneTime phone) {
        LogEntry entry = new LogEntry(
                id,
                step,
                kind,
                quantity,
                value,
                reason,
                corrects,
                evidenceId,
                at,
                PAGE,
                nextNumber++,
                storedAt,
                actor.name(),
                signature,
                phone);
        added.add(entry);
        return entry;
    }
}
