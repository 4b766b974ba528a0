package org.plumbrow.calc.energy.weather;

import static org.plumbrow.calc.energy.sun.HourOfYear.HOURS;

import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.List;
import org.plumbrow.calc.energy.sun.Place;
import org.plumbrow.calc.energy.sun.SunPosition;
import org.plumbrow.calc.energy.sun.SunTrack;

/**
 * Do global, beam and diffuse fit the sun of the place? c = mean |GHI - DHI - DNI cos Z| / mean GHI over the hours with
 * DNI above 200 and GHI above 100 W/m2. Measured on 13 typical years: 0.1 to 0.8 % where all is right, 5 to 7 % with the
 * clock half an hour off; so up to 2 % passes, up to 4 % is warned of.
 */
final class ClosureCheck {

    private static final double WARNS_ABOVE = 0.02;
    private static final double REFUSES_ABOVE = 0.04;
    private static final int FEWEST_HOURS = 100;
    /** Every so many hours are enough to find a shift. */
    private static final int SAMPLE = 5;

    private final SunTrack sun;
    private final double[][] columns;

    ClosureCheck(SunTrack sun, double[][] columns) {
        this.sun = sun;
        this.columns = columns;
    }

    /** @throws Unreadable if they do not fit, with the likeliest reason */
    void judge(List<WeatherFinding> findings) {
        double error = error(Column.DNI, Column.DHI, 1, this::cosineNow);
        if (error > REFUSES_ABOVE) {
            throw new Unreadable(
                    0,
                    "The radiation does not fit the sun of this place by %.1f %%: %s.".formatted(100 * error, reason()),
                    "Correct the header or the columns, or bring the file as it was published.");
        }
        if (error > WARNS_ABOVE) {
            findings.add(WeatherFinding.warning(
                    0,
                    "Global, beam and diffuse radiation agree with the sun of this place to %.1f %% only."
                            .formatted(100 * error),
                    "Check place and time zone in the header."));
        }
    }

    private interface CosineOfHour {
        double at(int hour);
    }

    private double cosineNow(int hour) {
        return Math.cos(Math.toRadians(sun.trueZenithDeg(hour)));
    }

    private double error(Column beam, Column diffuse, int step, CosineOfHour cosine) {
        double apart = 0;
        double global = 0;
        int hours = 0;
        for (int hour = 0; hour < HOURS; hour++) {
            double ghi = columns[Column.GHI.ordinal()][hour];
            double dni = columns[beam.ordinal()][hour];
            if (dni > 200 && ghi > 100 && hours++ % step == 0) {
                apart += Math.abs(ghi - columns[diffuse.ordinal()][hour] - dni * cosine.at(hour));
                global += ghi;
            }
        }
        return hours < FEWEST_HOURS ? 0 : apart / global;
    }

    private String reason() {
        if (error(Column.DHI, Column.DNI, 1, this::cosineNow) < WARNS_ABOVE) {
            return "the columns of direct and diffuse seem exchanged";
        }
        double best = 0;
        double least = Double.MAX_VALUE;
        for (int halves = -24; halves <= 24; halves++) {
            double moved = halves / 2.0;
            double error = error(Column.DNI, Column.DHI, SAMPLE, hour -> cosineMoved(hour, moved));
            if (error < least) {
                least = error;
                best = moved;
            }
        }
        if (best == 0 || least > REFUSES_ABOVE) {
            return "latitude, longitude or time zone in the header may be wrong";
        }
        return "its rows seem stamped %s h too %s"
                .formatted(NumberWords.of(Math.abs(best)), best > 0 ? "early" : "late");
    }

    private double cosineMoved(int hour, double hours) {
        Place place = sun.place();
        long seconds = Math.round((hour + 0.5 + hours - place.utcOffsetHours()) * 3600);
        ZonedDateTime when = ZonedDateTime.of(SunTrack.YEAR, 1, 1, 0, 0, 0, 0, ZoneOffset.UTC)
                .plusSeconds(seconds);
        return Math.cos(Math.toRadians(SunPosition.at(when, place).trueZenithDeg()));
    }
}
