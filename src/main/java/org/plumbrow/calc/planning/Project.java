package org.plumbrow.calc.planning;

/** A job as the plan sees it: whose activities belong together, and what people call it. */
public record Project(String id, String name) {}
