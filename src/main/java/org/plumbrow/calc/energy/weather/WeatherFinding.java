package org.plumbrow.calc.energy.weather;

/**
 * One thing that a reader says about a weather file.
 *
 * @param severity whether the file can be used
 * @param line line of the file, from 1; 0 when it is about the file as a whole
 * @param what what was found
 * @param cure what to do about it; what was done, when the file can be used
 */
public record WeatherFinding(Severity severity, int line, String what, String cure) {

    /** How much it matters. */
    public enum Severity {
        /** Nothing is taken in. */
        REFUSED,
        /** Taken in; every figure made from it carries the sentence. */
        WARNING,
        /** Taken in; good to know. */
        NOTE
    }

    static WeatherFinding refused(int line, String what, String cure) {
        return new WeatherFinding(Severity.REFUSED, line, what, cure);
    }

    static WeatherFinding warning(int line, String what, String cure) {
        return new WeatherFinding(Severity.WARNING, line, what, cure);
    }

    static WeatherFinding note(int line, String what, String cure) {
        return new WeatherFinding(Severity.NOTE, line, what, cure);
    }

    /** "Line 12: air temperature is empty. Bring a whole file." */
    public String sentence() {
        String where = line > 0 ? "Line %,d: ".formatted(line) : "";
        return where + what + " " + cure;
    }
}
