package org.plumbrow.cutover.ridethrough;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.ridethrough.house.HouseAir;
import org.plumbrow.calc.ridethrough.house.Outdoors;
import org.plumbrow.web.Entered;
import org.springframework.validation.Errors;

/** Which hour people ask about, and weather of their own for it. */
public record HourForm(
        @Nullable String day,
        @Nullable String time,
        @Nullable String minutes,
        @Nullable String outsideF,
        @Nullable String humidity) {

    private static final Range MINUTES = new Range(15, 720, "min");
    private static final Range OUTSIDE = new Range(-40, 125, "°F");
    private static final double USUAL_HUMIDITY = 70;
    private static final double SUN_OF_A_CLEAR_DAY = 900;

    /**
     * What was asked, read.
     *
     * @param typed weather of the person's own; null for the site's
     */
    record Hour(
            LocalDate day,
            LocalTime time,
            int minutes,
            @Nullable HourOutside typed) {}

    Hour read(Hour otherwise, Errors errors) {
        Entered entered = new Entered(errors);
        LocalDate date = entered.date("day", "the day", day);
        Integer length = entered.whole("minutes", "the minutes", minutes, MINUTES);
        Double airF = entered.maybe("outsideF", "the temperature outdoors", outsideF, OUTSIDE);
        Double damp = entered.maybe("humidity", "the humidity outdoors", humidity, Outdoors.HUMIDITY);
        LocalTime at = timeOr(otherwise.time, entered);
        return new Hour(
                date == null ? otherwise.day : date,
                at,
                length == null ? otherwise.minutes : length,
                airF == null ? null : typed(airF, damp == null ? USUAL_HUMIDITY : damp, at));
    }

    private static HourOutside typed(double airF, double humidity, LocalTime at) {
        double airC = HouseAir.AIR.check("outdoors", UsUnits.degC(airF));
        boolean byDay = at.getHour() >= 6 && at.getHour() < 20;
        return new HourOutside(airC, airC, humidity, byDay ? SUN_OF_A_CLEAR_DAY : 0);
    }

    private LocalTime timeOr(LocalTime otherwise, Entered entered) {
        String typed = Entered.text(time);
        if (typed.isEmpty()) {
            return otherwise;
        }
        try {
            return LocalTime.parse(typed);
        } catch (DateTimeParseException unreadable) {
            entered.refuse("time", "Write the time like 09:00.");
            return otherwise;
        }
    }

    static HourForm of(Hour hour) {
        return new HourForm(hour.day.toString(), hour.time.toString(), Integer.toString(hour.minutes), "", "");
    }
}
