package org.plumbrow.schedule.activity;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.calendar.Half;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.duration.ActivityCode;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.web.Actor;

/**
 * An activity of a project, as far as people change it: what has begun, what is done, which answer was promised, which
 * date is fixed. What is derived (durations, order) is written by {@link ActivityRows}, without touching the version.
 */
@Entity
@Table(name = "activity")
class Activity {

    @Id
    private UUID id;

    @Version
    private long version;

    private UUID branchId;
    private UUID projectId;
    private String key;

    @Enumerated(EnumType.STRING)
    private ActivityCode code;

    private String words;
    private @Nullable LocalDate startedOn;

    @Enumerated(EnumType.STRING)
    private @Nullable Half startedHalf;

    private @Nullable LocalDate finishedOn;

    @Enumerated(EnumType.STRING)
    private @Nullable Half finishedHalf;

    private @Nullable String doneWithStage;
    private @Nullable UUID doneByCrewId;
    private @Nullable Integer halfDaysLeft;
    private @Nullable LocalDate answerExpected;
    private @Nullable Instant recordedAt;
    private @Nullable String recordedBy;
    private @Nullable LocalDate pinnedOn;

    @Enumerated(EnumType.STRING)
    private @Nullable Half pinnedHalf;

    private @Nullable UUID pinnedCrewId;
    private @Nullable String pinReason;
    private @Nullable Instant pinnedAt;
    private @Nullable String pinnedBy;

    protected Activity() {} // for JPA

    UUID id() {
        return id;
    }

    long version() {
        return version;
    }

    UUID branchId() {
        return branchId;
    }

    UUID projectId() {
        return projectId;
    }

    boolean isWait() {
        return code.kind() == ActivityCode.Kind.WAIT;
    }

    Optional<Pin> pin() {
        return pinnedOn == null || pinnedHalf == null || pinReason == null
                ? Optional.empty()
                : Optional.of(new Pin(new HalfDay(pinnedOn, pinnedHalf), Optional.ofNullable(pinnedCrewId), pinReason));
    }

    Recorded recorded() {
        return new Recorded(
                Optional.ofNullable(startedOn).map(day -> new HalfDay(day, startedHalf)),
                Optional.ofNullable(finishedOn).map(day -> new HalfDay(day, finishedHalf)),
                Optional.ofNullable(doneByCrewId),
                Optional.ofNullable(halfDaysLeft),
                Optional.ofNullable(answerExpected));
    }

    /** Takes over what was recorded, all of it: begun, done, left, expected. An empty record takes it back. */
    JournalEvent record(Recorded now, Actor by, Instant at) {
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put("activity", key);
        recorded().putInto(facts, ".from");
        now.putInto(facts, ".to");
        startedOn = now.started().map(HalfDay::date).orElse(null);
        startedHalf = now.started().map(HalfDay::half).orElse(null);
        finishedOn = now.finished().map(HalfDay::date).orElse(null);
        finishedHalf = now.finished().map(HalfDay::half).orElse(null);
        doneByCrewId = now.crewId().orElse(null);
        halfDaysLeft = now.halfDaysLeft().orElse(null);
        answerExpected = now.answerExpected().orElse(null);
        doneWithStage = null;
        recordedAt = at;
        recordedBy = by.name();
        return JournalEvent.of(projectId, "activity.recorded", sentence(now), facts);
    }

    private String sentence(Recorded now) {
        if (now.finished().isPresent()) {
            HalfDay finished = now.finished().get();
            return "%s: %s %s.".formatted(what(), isWait() ? "answered" : "done", DayWords.withYear(finished.date()));
        }
        if (now.started().isEmpty()) {
            return what() + ": taken back, not begun.";
        }
        String begun = "%s: %s %s"
                .formatted(
                        what(),
                        isWait() ? "asked for" : "begun",
                        DayWords.withYear(now.started().get().date()));
        String expected = now.answerExpected()
                .map(day -> ", promised for " + DayWords.withYear(day))
                .orElse("");
        String left = now.halfDaysLeft()
                .map(halfDays -> String.format(Locale.US, ", %s working days left", halfDays / 2.0))
                .map(words -> words.replace(".0 ", " "))
                .orElse("");
        return begun + expected + left + ".";
    }

    /** Fixes the start: the plan keeps it and bends everything else around it. */
    JournalEvent fix(Pin now, Actor by, Instant at) {
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put("activity", key);
        pin().ifPresent(was -> was.putInto(facts, ".from"));
        now.putInto(facts, ".to");
        pinnedOn = now.start().date();
        pinnedHalf = now.start().half();
        pinnedCrewId = now.crewId().orElse(null);
        pinReason = now.reason();
        pinnedAt = at;
        pinnedBy = by.name();
        return JournalEvent.of(
                projectId,
                "activity.fixed",
                "%s: start fixed on %s, %s. Reason: %s"
                        .formatted(
                                what(),
                                DayWords.withYear(now.start().date()),
                                now.start().half().words(),
                                now.reason()),
                facts);
    }

    /** Lets the plan decide again. */
    JournalEvent release(Actor by, Instant at) {
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put("activity", key);
        pin().ifPresent(was -> was.putInto(facts, ".from"));
        pinnedOn = null;
        pinnedHalf = null;
        pinnedCrewId = null;
        pinReason = null;
        pinnedAt = null;
        pinnedBy = null;
        return JournalEvent.of(projectId, "activity.released", what() + ": the plan decides the date again.", facts);
    }

    /** "Modules, array 2". */
    String what() {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
