package org.plumbrow.calc.planning;

import java.util.Optional;
import org.plumbrow.calc.calendar.HalfDay;

/**
 * When an activity is done, and by whom.
 *
 * @param start of a work that has begun: the half-day from which the rest is planned
 * @param finish its last half-day, included
 * @param crewId empty for waits, for work at a desk and for what is done
 * @param bound what kept the start from being earlier
 */
public record Placement(String activityId, HalfDay start, HalfDay finish, Optional<String> crewId, Bound bound) {}
