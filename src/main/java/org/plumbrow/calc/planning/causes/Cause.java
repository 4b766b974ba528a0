package org.plumbrow.calc.planning.causes;

import java.time.LocalDate;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.planning.Absence;

/** One condition of a branch that could be otherwise. */
public sealed interface Cause {

    /** The start of an activity is settled. */
    record Settled(String activityId, HalfDay start) implements Cause {}

    /** The crew of a settled activity is settled too. */
    record SettledCrew(String activityId, String crewId) implements Cause {}

    /** An answer is promised for then. */
    record AnswerOn(String activityId, HalfDay answer) implements Cause {}

    /** A crew is away. */
    record CrewAway(String crewId, Absence absence) implements Cause {}

    /** So many pieces of a kind of equipment are there, and no more. */
    record Pieces(String equipmentId, int count) implements Cause {}

    /** Pieces of a kind of equipment are away. */
    record PiecesAway(String equipmentId, int count, Absence absence) implements Cause {}

    /** Nobody works on that day. */
    record DayOff(LocalDate date, String reason) implements Cause {}

    /** Only some crews may do the activity: by skill, or by how many people they are. */
    record OnlySomeCrews(String activityId) implements Cause {}

    /** One crew does all works of a group of a project. */
    record OneCrew(String projectId, String group) implements Cause {}
}
