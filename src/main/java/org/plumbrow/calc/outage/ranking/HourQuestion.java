package org.plumbrow.calc.outage.ranking;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.calendar.WorkingCalendar;
import org.plumbrow.calc.outage.UtilityTerms;
import org.plumbrow.calc.outage.WindowQuestion.Earliest;
import org.plumbrow.calc.outage.WindowQuestion.Promise;

/**
 * All that decides in which hours of the next weeks the power can be off.
 *
 * @param today the day on which the notices would leave
 * @param from first start looked at
 * @param through last start looked at
 * @param everyMinutes from one start to the next, 5 to 1,440
 * @param earliest from when the work before the outage is done
 * @param permits what must still count on the day
 * @param daylight of each day; a day without one is open
 */
public record HourQuestion(
        LocalDate today,
        LocalDateTime from,
        LocalDateTime through,
        int everyMinutes,
        WorkMinutes work,
        UtilityTerms utility,
        WorkingCalendar branch,
        Earliest earliest,
        List<StopsCounting> permits,
        Hands hands,
        Map<LocalDate, Daylight> daylight,
        CustomerDays customer,
        AnimalDays animals,
        Optional<MilkDay> milk,
        List<LoadHours> loads,
        Optional<GeneratorDays> generator,
        Optional<WeatherHours> weather,
        WeatherLimits weatherLimits,
        WayBack wayBack,
        Optional<Promise> promise) {

    public static final Range EVERY = new Range(5, 1440, "min");

    public HourQuestion {
        EVERY.check("minutes between starts", everyMinutes);
        if (through.isBefore(from)) {
            throw new IllegalArgumentException("hours from " + from + " to " + through + " are none");
        }
        daylight = Map.copyOf(daylight);
        loads = List.copyOf(loads);
        permits = List.copyOf(permits);
    }

    /**
     * A paper without which nothing is connected.
     *
     * @param lastDay on which it counts
     * @param why said of every day behind that: "the electrical permit ends Mar 9"
     */
    public record StopsCounting(LocalDate lastDay, String why) {}

    /**
     * Minutes without power. Low, typical and high are taken as the 10, 50 and 90 of 100 points of a log-normal half on
     * either side, as all work is.
     *
     * @param planned what customer and utility are told
     */
    public record WorkMinutes(int low, int typical, int high, int planned) {
        public WorkMinutes {
            if (!(low > 0 && low <= typical && typical <= high)) {
                throw new IllegalArgumentException("minutes %d, %d, %d are not in order".formatted(low, typical, high));
            }
            org.plumbrow.calc.outage.WindowQuestion.OUTAGE_MINUTES.check("outage", planned);
        }
    }

    /** Minutes that the way back takes; see {@link org.plumbrow.calc.outage.LatestReversal}. */
    public record WayBack(int undo, int bringBack, int reserve) {
        public static final WayBack USUAL = new WayBack(20, 15, 10);

        int minutes() {
            return undo + bringBack + reserve;
        }
    }
}
