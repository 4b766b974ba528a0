package org.plumbrow.calc.forecast;

/**
 * An activity that drives a date.
 *
 * @param share of the runs looked at (those that broke the promise, else all) in which it lay on the chain that bound
 *     the date, 0 to 1: its criticality index
 */
public record Driver(String activityId, double share) {}
