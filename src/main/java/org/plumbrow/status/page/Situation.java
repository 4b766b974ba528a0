package org.plumbrow.status.page;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.cutover.OutageFacts;
import org.plumbrow.cutover.OutageState;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Standing;

/**
 * The one thing that a customer has to know now; the page begins with it.
 *
 * @param window the outage that it is about; null for what is about none
 */
record Situation(Kind kind, @Nullable OutageFacts window) {

    /** In the order in which they count: power before everything else. */
    enum Kind {
        OFF,
        /** Longer than we told them to plan for. */
        OFF_LONG,
        CALLED_OFF,
        ON_HOLD,
        BACK,
        /** The power is back because the day ended with everything as it was before. */
        REVERSED,
        AHEAD,
        /** A day that they were told of, and that does not take place. */
        LET_GO,
        STAGE
    }

    /** A log that nobody ended says nothing about today. */
    private static final Duration LONGEST_OUTAGE = Duration.ofHours(24);

    /** @param windows newest first */
    static Situation of(ProjectFacts project, List<OutageFacts> windows, Instant now, ZoneId zone) {
        LocalDate today = LocalDate.ofInstant(now, zone);
        return off(windows, now)
                .or(() -> standing(project.standing()))
                .or(() -> back(windows, today, zone))
                .or(() -> ahead(windows, today))
                .or(() -> letGo(windows, today))
                .orElse(new Situation(Kind.STAGE, null));
    }

    private static Optional<Situation> off(List<OutageFacts> windows, Instant now) {
        return windows.stream()
                .filter(window -> window.powerOffAt() != null
                        && window.powerOnAt() == null
                        && !window.powerOffAt().isAfter(now)
                        && window.powerOffAt().plus(LONGEST_OUTAGE).isAfter(now))
                .findFirst()
                .map(window -> new Situation(isLong(window, now) ? Kind.OFF_LONG : Kind.OFF, window));
    }

    private static boolean isLong(OutageFacts window, Instant now) {
        return window.powerOffAt() != null
                && now.isAfter(window.powerOffAt().plus(Duration.ofMinutes(window.planForMinutes())));
    }

    private static Optional<Situation> standing(Standing standing) {
        return switch (standing) {
            case OPEN -> Optional.empty();
            case ON_HOLD -> Optional.of(new Situation(Kind.ON_HOLD, null));
            case CALLED_OFF -> Optional.of(new Situation(Kind.CALLED_OFF, null));
        };
    }

    private static Optional<Situation> back(List<OutageFacts> windows, LocalDate today, ZoneId zone) {
        return windows.stream()
                .filter(window -> window.powerOffAt() != null
                        && window.powerOnAt() != null
                        && LocalDate.ofInstant(window.powerOnAt(), zone).equals(today))
                .findFirst()
                .map(window ->
                        new Situation(window.state() == OutageState.CANCELLED ? Kind.REVERSED : Kind.BACK, window));
    }

    private static Optional<Situation> ahead(List<OutageFacts> windows, LocalDate today) {
        return announced(windows)
                .filter(window -> !window.day().isBefore(today) && window.powerOffAt() == null)
                .map(window -> new Situation(Kind.AHEAD, window));
    }

    /** The window that the customer may know of and that is still to come. */
    static Optional<OutageFacts> announced(List<OutageFacts> windows) {
        return windows.stream().filter(window -> window.state().isAnnounced()).findFirst();
    }

    private static Optional<Situation> letGo(List<OutageFacts> windows, LocalDate today) {
        return windows.stream()
                .findFirst()
                .filter(window -> window.state() == OutageState.CANCELLED
                        && window.customerTold() != null
                        && window.powerOffAt() == null
                        && !window.day().isBefore(today))
                .map(window -> new Situation(Kind.LET_GO, window));
    }

    OutageFacts outage() {
        if (window == null) {
            throw new IllegalStateException(kind + " is about no outage");
        }
        return window;
    }

    boolean is(Kind one) {
        return kind == one;
    }

    boolean isOffNow() {
        return kind == Kind.OFF || kind == Kind.OFF_LONG;
    }

    /** Off now, or to go off today: a page that is open is to follow it. */
    boolean goesOnToday(LocalDate today) {
        return isOffNow() || kind == Kind.AHEAD && outage().day().equals(today);
    }

    /** Whether there is an appointment that a calendar should hold, or let go. */
    boolean hasAppointment() {
        return kind == Kind.AHEAD || kind == Kind.LET_GO;
    }
}
