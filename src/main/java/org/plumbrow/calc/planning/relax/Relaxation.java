package org.plumbrow.calc.planning.relax;

import java.time.LocalDate;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.planning.Absence;

/** One condition that somebody could change. */
public sealed interface Relaxation {

    /** A second crew like this one, for so many working days from that day on. */
    record CrewLike(String crewId, LocalDate from, int workingDays) implements Relaxation {}

    /** A crew is there although it was to be away. */
    record CrewStays(String crewId, Absence absence) implements Relaxation {}

    /** One piece more of an equipment, all the time. */
    record OneMore(String equipmentId) implements Relaxation {}

    /** The branch works on Saturdays, up to that day. */
    record Saturdays(LocalDate until) implements Relaxation {}

    /** Whoever is waited for answers so many days sooner, counted as that wait is. */
    record AnsweredSooner(String activityId, int days) implements Relaxation {}

    /** A project is served before another one wherever both want the same crew or equipment. */
    record ServedBefore(String projectId, String otherProjectId) implements Relaxation {}

    /** A settled start may move. */
    record NotSettled(String activityId, HalfDay start) implements Relaxation {}
}
