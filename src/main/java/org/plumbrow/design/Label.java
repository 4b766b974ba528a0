package org.plumbrow.design;

/** A label or plaque, and where it goes. */
public record Label(String place, String text, String clause) {}
