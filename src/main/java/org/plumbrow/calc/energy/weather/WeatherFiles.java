package org.plumbrow.calc.energy.weather;

import static org.plumbrow.calc.energy.sun.HourOfYear.HOURS;

import java.util.ArrayList;
import java.util.List;
import org.plumbrow.calc.energy.sun.ErbsSplit;
import org.plumbrow.calc.energy.sun.SunTrack;

/**
 * Reads a typical year, whatever it is kept in: EPW, TMY3 or NSRDB CSV, TM2. The format is told from the first lines.
 * A file that cannot be trusted is refused with line and cure; one that can, with remarks, carries them along.
 */
public final class WeatherFiles {

    private WeatherFiles() {}

    /** @param text the whole file, decoded; at most 10 million characters */
    public static WeatherReading read(String text) {
        try {
            TextLines lines = TextLines.of(text);
            return new WeatherReading.Read(judged(WeatherFormat.of(lines).read(lines)));
        } catch (Unreadable wrong) {
            return new WeatherReading.Refused(List.of(wrong.finding()));
        }
    }

    private static WeatherYear judged(RawYear raw) {
        List<WeatherFinding> findings = new ArrayList<>();
        List<RawHour> rows = HourSequence.of(raw.hours(), findings);
        double[][] columns = columns(rows);
        SunTrack sun = SunTrack.over(raw.place());
        boolean globalOnly = isEmpty(columns, Column.DNI) && isEmpty(columns, Column.DHI);
        if (globalOnly) {
            noBeam(columns);
        }
        new Gaps(columns, rows, findings).fill();
        if (globalOnly) {
            split(columns, sun, findings);
        } else {
            new ClosureCheck(sun, columns).judge(findings);
        }
        new Plausibility(sun, columns, rows, findings).judge();
        return new WeatherYear(raw.origin(), raw.station(), raw.place(), columns, findings);
    }

    /** @return {@code double[6][8760]}; a little below zero, as instruments read at night, is zero */
    private static double[][] columns(List<RawHour> rows) {
        double[][] columns = new double[Column.COUNT][HOURS];
        for (int hour = 0; hour < HOURS; hour++) {
            for (Column column : Column.values()) {
                double value = rows.get(hour).value(column);
                columns[column.ordinal()][hour] = column.isRadiation() && value < 0 ? 0 : value;
            }
        }
        return columns;
    }

    private static boolean isEmpty(double[][] columns, Column column) {
        for (double value : columns[column.ordinal()]) {
            if (value > 0) {
                return false;
            }
        }
        return true;
    }

    private static void noBeam(double[][] columns) {
        java.util.Arrays.fill(columns[Column.DNI.ordinal()], 0);
        java.util.Arrays.fill(columns[Column.DHI.ordinal()], 0);
    }

    private static void split(double[][] columns, SunTrack sun, List<WeatherFinding> findings) {
        for (int hour = 0; hour < HOURS; hour++) {
            ErbsSplit split = ErbsSplit.of(
                    columns[Column.GHI.ordinal()][hour], sun.apparentZenithDeg(hour), sun.extraterrestrialWPerM2(hour));
            columns[Column.DNI.ordinal()][hour] = split.dniWPerM2();
            columns[Column.DHI.ordinal()][hour] = split.dhiWPerM2();
        }
        findings.add(WeatherFinding.warning(
                0,
                "The file has no direct and diffuse radiation.",
                "They were split from the global (Erbs 1982), which moves a year's yield by up to 2 %."));
    }
}
