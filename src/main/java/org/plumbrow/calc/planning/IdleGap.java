package org.plumbrow.calc.planning;

import org.plumbrow.calc.calendar.HalfDay;

/** A run of working half-days on which a crew is there and has nothing to do. */
public record IdleGap(String crewId, HalfDay first, HalfDay last, int halfDays) {}
