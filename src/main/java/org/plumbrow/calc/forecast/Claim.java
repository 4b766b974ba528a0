package org.plumbrow.calc.forecast;

/**
 * So many units of one kind that a step holds while it is worked on: its crew, or pieces of equipment.
 *
 * @param kind number of the kind: crews first, then equipment
 * @param firstUnit the kind's units are numbered from here on
 * @param units how many the branch has
 * @param count how many of them are held, at most {@code units}
 */
record Claim(int kind, int firstUnit, int units, int count) {}
