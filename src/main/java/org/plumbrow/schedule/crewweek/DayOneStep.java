package org.plumbrow.schedule.crewweek;

import java.util.Arrays;
import java.util.Optional;

/** What a crew does on its first morning at a site before anything is built, in this order (trade practice). */
enum DayOneStep {
    INTRODUCED("introduced", "Customer introduced to the crew"),
    LOCATION("location", "Location confirmed on the ground with the customer"),
    SHADE("shade", "Second shade reading taken"),
    STRING_LINE("string-line", "String line set");

    private final String path;
    private final String words;

    DayOneStep(String path, String words) {
        this.path = path;
        this.words = words;
    }

    static Optional<DayOneStep> at(String path) {
        return Arrays.stream(values()).filter(step -> step.path.equals(path)).findFirst();
    }

    public String path() {
        return path;
    }

    public String words() {
        return words;
    }

    public boolean isShade() {
        return this == SHADE;
    }
}
