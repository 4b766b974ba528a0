package org.plumbrow.calc.energy.weather;

/** Ends the reading of a file at the first thing that makes it useless; caught once, in {@link WeatherFiles}. */
final class Unreadable extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final transient WeatherFinding finding;

    Unreadable(int line, String what, String cure) {
        super(what);
        this.finding = WeatherFinding.refused(line, what, cure);
    }

    WeatherFinding finding() {
        return finding;
    }
}
