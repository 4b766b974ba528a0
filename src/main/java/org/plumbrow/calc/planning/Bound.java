package org.plumbrow.calc.planning;

import org.plumbrow.calc.calendar.HalfDay;

/**
 * What bound the start of an activity: the last thing that kept it from being earlier. {@link PlanWords} makes the
 * sentence.
 */
public sealed interface Bound {

    /** Nothing but that no work is planned into the past. */
    record Today() implements Bound {}

    /** Not before a given date. */
    record Released(HalfDay from) implements Bound {}

    /**
     * An activity that comes first (a work or a wait).
     *
     * @param finished its finish; the lag, if any, comes on top
     */
    record After(String activityId, HalfDay finished) implements Bound {}

    /** The crew works on something else until then. */
    record CrewBusy(String crewId, String activityId, HalfDay until) implements Bound {}

    /** The crew is away until then. */
    record CrewAway(String crewId, HalfDay until, String reason) implements Bound {}

    /** The shared equipment is at another activity until then. */
    record EquipmentBusy(String equipmentId, String activityId, HalfDay until) implements Bound {}

    /** Too few pieces of the equipment are there until then. */
    record EquipmentAway(String equipmentId, HalfDay until, String reason) implements Bound {}

    /** It was free to start on a day on which the branch does not work. */
    record DayOff(HalfDay wanted, String reason) implements Bound {}

    /** Somebody settled the start. */
    record Pin(HalfDay start) implements Bound {}

    /** It could start earlier; it stays on the date that people know. */
    record Kept(HalfDay start) implements Bound {}

    /** It has begun already. */
    record Underway(HalfDay start) implements Bound {}

    /** It is finished. */
    record Finished(HalfDay finish) implements Bound {}

    /** A wait that is begun as late as the activity that needs it allows. */
    record JustInTime(String activityId, HalfDay neededBy) implements Bound {}
}
