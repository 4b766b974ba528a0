package org.plumbrow.design;

/** Something that stands in or beside an array; from its lower left corner, along the row and up the slope. */
public record Obstruction(String name, double rightFt, double upFt, double widthFt, double lengthFt, double heightFt) {}
