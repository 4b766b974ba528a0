package org.plumbrow.web;

/** One choice of a list: what the form sends and what a person reads. */
public record Option(String value, String words) {}
