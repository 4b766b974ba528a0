package org.plumbrow.calc.calendar;

import java.time.LocalDate;

/** One date on which nobody works though its weekday is a working one, and why. */
public record ClosedDay(LocalDate date, String reason) {}
