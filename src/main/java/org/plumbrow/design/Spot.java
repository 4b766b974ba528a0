package org.plumbrow.design;

/** A point, feet east and north of the meter; south and west are below 0. */
public record Spot(double eastFt, double northFt) {}
