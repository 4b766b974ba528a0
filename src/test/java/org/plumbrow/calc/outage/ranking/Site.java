package org.plumbrow.calc.outage.ranking;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.plumbrow.calc.calendar.Notice;
import org.plumbrow.calc.calendar.WorkingCalendar;
import org.plumbrow.calc.outage.CrewOffer;
import org.plumbrow.calc.outage.Slot;
import org.plumbrow.calc.outage.UtilityTerms;
import org.plumbrow.calc.outage.WindowQuestion.Earliest;
import org.plumbrow.calc.outage.WindowQuestion.Promise;
import org.plumbrow.calc.outage.ranking.HourQuestion.WayBack;
import org.plumbrow.calc.outage.ranking.HourQuestion.WorkMinutes;
import org.plumbrow.calc.outage.ranking.LoadHours.Stands;
import org.plumbrow.calc.ridethrough.Generator;
import org.plumbrow.calc.ridethrough.GeneratorCover;

/**
 * A site without any difficulty in March 2027: today is Monday the 1st, three days of notice, slot 8:00 to 18:00 on
 * weekdays, two people free, sun from 6:30 to 19:00, weather mild and forecast, nothing on the site that asks for power. A
 * test changes what it is about.
 */
final class Site {

    static final LocalDate TODAY = LocalDate.parse("2027-03-01");
    static final LocalDate DAY = LocalDate.parse("2027-03-10");

    LocalDateTime from = DAY.atTime(0, 0);
    LocalDateTime through = DAY.atTime(23, 59);
    int everyMinutes = 30;
    WorkMinutes work = new WorkMinutes(60, 75, 90, 90);
    int noticeDays = 3;
    WorkingCalendar utilityCalendar = WorkingCalendar.MONDAY_TO_FRIDAY;
    WorkingCalendar branch = WorkingCalendar.MONDAY_TO_FRIDAY;
    List<Slot> slots = List.of(slot("08:00", "18:00"));
    Earliest earliest = new Earliest(TODAY, "AC gear not landed");
    List<HourQuestion.StopsCounting> permits = List.of();
    Hands hands = new Hands(List.of(new Hands.Crew(new CrewOffer("4", "Crew 4", List.of()), 2)), List.of());
    Daylight light = new Daylight(LocalTime.of(6, 30), LocalTime.of(19, 0));
    CustomerDays customer = CustomerDays.FREE;
    AnimalDays animals = AnimalDays.NONE;
    Optional<MilkDay> milk = Optional.empty();
    List<LoadHours> loads = List.of();
    Optional<GeneratorDays> generator = Optional.empty();
    WayBack wayBack = WayBack.USUAL;
    Optional<Promise> promise = Optional.empty();
    private final Map<Integer, WeatherHour> weather = new HashMap<>();

    static Slot slot(String from, String to) {
        return new Slot(
                EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY),
                LocalTime.parse(from),
                LocalTime.parse(to),
                Optional.empty());
    }

    static WeatherHour.Forecast mild() {
        return forecast(10, 3, 5, 0);
    }

    static WeatherHour.Forecast forecast(double airC, double gust, double rain, double lightning) {
        return new WeatherHour.Forecast(airC, 50, gust, OptionalDouble.of(rain), OptionalDouble.of(lightning));
    }

    /** Weather of one hour of the day looked at. */
    Site weatherAt(int hour, WeatherHour then) {
        weather.put(hour, then);
        return this;
    }

    Site load(double shortEnd, double likely, double longEnd) {
        loads = List.of(new LoadHours(
                "House 1", firstHour(), Collections.nCopies(hours(), new Stands(shortEnd, likely, longEnd))));
        return this;
    }

    Site loadAt(int hour, double shortEnd) {
        List<Stands> changed = new ArrayList<>(loads.get(0).hours());
        changed.set(48 + hour, new Stands(shortEnd, shortEnd, shortEnd));
        loads = List.of(new LoadHours("House 1", firstHour(), changed));
        return this;
    }

    Site generator(double fuelGal, LocalDate... runs) {
        return generator(60, Generator.Transfer.DOUBLE_THROW, Generator.Rotation.SAME, fuelGal, runs);
    }

    Site generator(
            double kw, Generator.Transfer transfer, Generator.Rotation rotation, double fuelGal, LocalDate... runs) {
        Generator machine = new Generator(kw, transfer, 0, 20, fuelGal, 0.08, OptionalInt.of(1), rotation, 15);
        generator = Optional.of(new GeneratorDays(
                GeneratorCover.of(machine, List.of(new GeneratorCover.FarmLoad("fans", 20, 2)), work.planned()),
                List.of(runs)));
        return this;
    }

    private LocalDateTime firstHour() {
        return from.toLocalDate().minusDays(2).atStartOfDay();
    }

    private int hours() {
        return (int) (from.toLocalDate()
                                .datesUntil(through.toLocalDate().plusDays(1))
                                .count()
                        + 5)
                * 24;
    }

    HourQuestion question() {
        Map<LocalDate, Daylight> daylight = new HashMap<>();
        from.toLocalDate()
                .minusDays(2)
                .datesUntil(through.toLocalDate().plusDays(3))
                .forEach(day -> daylight.put(day, light));
        List<WeatherHour> hours = new ArrayList<>(Collections.nCopies(hours(), mild()));
        weather.forEach((hour, then) -> hours.set(48 + hour, then));
        return new HourQuestion(
                TODAY,
                from,
                through,
                everyMinutes,
                work,
                new UtilityTerms("The utility", new Notice(noticeDays, utilityCalendar), slots),
                branch,
                earliest,
                permits,
                hands,
                daylight,
                customer,
                animals,
                milk,
                loads,
                generator,
                Optional.of(new WeatherHours(firstHour(), hours)),
                WeatherLimits.USUAL,
                wayBack,
                promise);
    }

    HourWindow opened(String time) {
        return HourRanking.opened(question(), DAY.atTime(LocalTime.parse(time)));
    }

    Factor factor(FactorKind kind, String time) {
        return opened(time).factors().stream()
                .filter(one -> one.kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    boolean isBroken(FactorKind kind, String time) {
        return factor(kind, time).isBroken();
    }
}
