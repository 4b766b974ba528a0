package org.plumbrow.cutover.daylog;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.cutover.OutageFacts;
import org.plumbrow.project.ProjectFacts;

/**
 * What a day log tells at one moment, for whoever follows the day or reports it. It says what was written; it never says
 * that anything may be touched.
 *
 * @param now the moment at which it is told
 * @param lines the procedure of that day in its order; empty before the log was opened
 * @param notes what people wrote of what was wrong, near misses too, newest last
 * @param people who was on site, with what they were there for
 * @param reversedBecause empty when it was not reversed, or before somebody has said why
 */
public record DayStory(
        ProjectFacts project,
        OutageFacts window,
        ZoneId zone,
        Instant now,
        How how,
        String personInCharge,
        List<Line> lines,
        @Nullable Latest latest,
        @Nullable Word lastWord,
        List<Note> notes,
        List<String> people,
        List<UUID> photos,
        @Nullable Instant reversedAt,
        String reversedBecause,
        @Nullable Instant closedAt) {

    /** Nobody wonders about a phone that is silent for so long; a house limit. */
    private static final int QUIET_MINUTES = 15;

    /** How far the day is. */
    public enum How {
        NOT_OPENED,
        RUNNING,
        REVERSING,
        /** The power is back after a reversal, the log still open. */
        REVERSED,
        COMPLETE,
        CLOSED_DONE,
        CLOSED_REVERSED,
        /** Moved or cancelled before the power went off. */
        GIVEN_UP;

        public boolean isClosed() {
            return this == CLOSED_DONE || this == CLOSED_REVERSED;
        }
    }

    /**
     * A step or hold point.
     *
     * @param plannedAt when it should be done by the window's own minutes
     * @param doneAt when it was, by the server's clock; null before
     * @param by who did or signed it, as written
     * @param whyNot why it does not apply here; null when it does
     * @param here whether one stands at it
     */
    public record Line(
            String code,
            String title,
            String words,
            String who,
            boolean hold,
            int typicalMinutes,
            Instant plannedAt,
            @Nullable Instant doneAt,
            String by,
            @Nullable String whyNot,
            boolean here,
            List<Read> reads) {

        /** Minutes behind the plan, of the step under way too; negative when it was early. */
        public long behind(Instant now) {
            if (whyNot != null || doneAt == null && !here) {
                return 0;
            }
            long behind = minutes(plannedAt, doneAt == null ? now : doneAt);
            return doneAt == null ? Math.max(0, behind) : behind;
        }
    }

    /**
     * A reading that counts.
     *
     * @param limits unit and usual values
     * @param outside whether it lies outside its limits
     * @param stays why it stays all the same; may be empty
     */
    public record Read(String words, String value, String limits, boolean outside, String stays, boolean corrected) {}

    /** The latest decision to reverse, and what needs the power by when. */
    public record Latest(Instant decideBy, Instant neededBy, String why) {}

    /**
     * What was heard last.
     *
     * @param storedAt by the server
     * @param phoneTime by the phone; null when it was written with signal, on the page
     * @param minutesWrong by how many minutes the phone's clock is wrong
     */
    public record Word(
            String about,
            String by,
            Instant storedAt,
            Instant happenedAt,
            @Nullable Instant phoneTime,
            long minutesWrong) {}

    /** What somebody wrote of what was wrong. */
    public record Note(String step, String text, Instant at, String by) {}

    public @Nullable Instant offAt() {
        return window.powerOffAt();
    }

    public @Nullable Instant onAt() {
        return window.powerOnAt();
    }

    public boolean isOffNow() {
        return offAt() != null && onAt() == null && !how.isClosed();
    }

    /** Without power so far, or in all; null before it went off. */
    public @Nullable Long offMinutes() {
        Instant off = offAt();
        Instant on = onAt();
        return off == null ? null : (Long) minutes(off, on == null ? now : on);
    }

    public Optional<Line> here() {
        return lines.stream().filter(Line::here).findFirst();
    }

    /** Minutes left to the latest decision to reverse; null when it is not set or no longer asked. */
    public @Nullable Long minutesLeft() {
        return latest == null || onAt() != null || how != How.RUNNING ? null : (Long) minutes(now, latest.decideBy());
    }

    /** How far the day is behind its plan, minutes; at least 0. */
    public long behind() {
        long last = 0;
        for (Line line : lines) {
            last = line.doneAt() != null ? line.behind(now) : last;
            last = line.here() ? Math.max(last, line.behind(now)) : last;
        }
        return how == How.RUNNING ? Math.max(0, last) : 0;
    }

    /** Minutes since something was heard last; null before anything was. */
    public @Nullable Long silentMinutes() {
        return lastWord == null ? null : (Long) minutes(lastWord.storedAt(), now);
    }

    /** Longer than {@value #QUIET_MINUTES} minutes, and longer than the step under way usually takes. */
    public boolean isSilent() {
        Long silent = silentMinutes();
        boolean open = how == How.RUNNING || how == How.REVERSING;
        int usual = here().map(Line::typicalMinutes).orElse(0);
        return open && silent != null && silent > Math.max(QUIET_MINUTES, usual);
    }

    /**
     * When the power is expected back: by the minutes told, and later by what the work has fallen behind since. Null
     * where it is not off, and where all that was expected has passed: then nobody can tell.
     */
    public @Nullable Back expectedBack() {
        Instant off = offAt();
        if (off == null || !isOffNow()) {
            return null;
        }
        long late = how == How.RUNNING ? Math.max(0, behind() - Math.max(0, minutes(start(), off))) : 0;
        Instant soonest = off.plus(Duration.ofMinutes(window.outageMinutes() + late));
        Instant latest = off.plus(Duration.ofMinutes(window.planForMinutes() + late));
        return latest.isAfter(now) ? new Back(soonest.isBefore(now) ? now : soonest, latest) : null;
    }

    private Instant start() {
        return window.day().atTime(window.start()).atZone(zone).toInstant();
    }

    /** The earliest and the latest of what is expected. */
    public record Back(Instant soonest, Instant latest) {}

    static long minutes(Instant from, Instant to) {
        return Duration.between(from.truncatedTo(ChronoUnit.MINUTES), to.truncatedTo(ChronoUnit.MINUTES))
                .toMinutes();
    }
}
