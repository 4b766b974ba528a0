package org.plumbrow.calc.duration;

/** Must be finished first; so many whole calendar days later the activity may start. */
public record Follows(String key, int lagCalendarDays) {}
