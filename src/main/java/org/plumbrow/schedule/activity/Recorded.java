package org.plumbrow.schedule.activity;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.calc.calendar.HalfDay;

/**
 * What people know about an activity that has begun.
 *
 * @param started first half-day of the work, or the day on which something was asked for
 * @param finished last half-day; empty while it goes on
 * @param crewId who did or does it
 * @param halfDaysLeft of work that goes on; empty for "as much as planned"
 * @param answerExpected of a wait: the day somebody promised
 */
public record Recorded(
        Optional<HalfDay> started,
        Optional<HalfDay> finished,
        Optional<UUID> crewId,
        Optional<Integer> halfDaysLeft,
        Optional<LocalDate> answerExpected) {

    /** Not begun. */
    public static final Recorded NOTHING =
            new Recorded(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    public Recorded {
        if (finished.isPresent() && started.isEmpty()) {
            throw new IllegalArgumentException("finished without a start");
        }
        if (finished.isPresent() && finished.get().isBefore(started.get())) {
            throw new IllegalArgumentException("finished before the start");
        }
    }

    public static Recorded begun(HalfDay start, Optional<UUID> crewId) {
        return new Recorded(Optional.of(start), Optional.empty(), crewId, Optional.empty(), Optional.empty());
    }

    public static Recorded done(HalfDay start, HalfDay finish, Optional<UUID> crewId) {
        return new Recorded(Optional.of(start), Optional.of(finish), crewId, Optional.empty(), Optional.empty());
    }

    void putInto(Map<String, String> facts, String ending) {
        started.ifPresent(start -> facts.put("started" + ending, written(start)));
        finished.ifPresent(finish -> facts.put("finished" + ending, written(finish)));
        crewId.ifPresent(crew -> facts.put("crew" + ending, crew.toString()));
        halfDaysLeft.ifPresent(left -> facts.put("halfDaysLeft" + ending, Integer.toString(left)));
        answerExpected.ifPresent(day -> facts.put("answerExpected" + ending, day.toString()));
    }

    private static String written(HalfDay halfDay) {
        return halfDay.date() + " " + halfDay.half().words();
    }
}
