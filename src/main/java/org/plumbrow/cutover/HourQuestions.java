package org.plumbrow.cutover;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.energy.sun.Place;
import org.plumbrow.calc.outage.WindowQuestion;
import org.plumbrow.calc.outage.ranking.AnimalDays;
import org.plumbrow.calc.outage.ranking.CustomerDays;
import org.plumbrow.calc.outage.ranking.Daylight;
import org.plumbrow.calc.outage.ranking.Hands;
import org.plumbrow.calc.outage.ranking.HourQuestion;
import org.plumbrow.calc.outage.ranking.LoadHours;
import org.plumbrow.calc.outage.ranking.WeatherHours;
import org.plumbrow.calc.outage.ranking.WeatherLimits;
import org.plumbrow.crew.Crews;
import org.plumbrow.cutover.ridethrough.LoadAnswers;
import org.plumbrow.cutover.ridethrough.OnSite;
import org.plumbrow.cutover.ridethrough.SiteTimes;
import org.plumbrow.cutover.ridethrough.SiteWeather;
import org.plumbrow.permit.AwaitedBook;
import org.plumbrow.project.ProjectFacts;
import org.springframework.stereotype.Component;

/** Puts together the question of which hours the power can be off: the question of the days, and all that stands on site. */
@Component
class HourQuestions {

    static final int EVERY_MINUTES = 30;

    static final LocalTime FIRST_START = LocalTime.of(5, 0);
    private static final LocalTime LAST_START = LocalTime.of(20, 0);
    /** The question looks so many days beyond either end. */
    private static final int DAYS_BESIDE = 3;
    /** An outage is looked into so many times as long as it is planned. */
    private static final int TIMES_PLANNED = 3;

    private static final double LEAST_HORIZON = 240;
    private static final double MOST_HORIZON = 2880;
    private static final double STRESS_THI = 72;

    private final Crews crews;
    private final MachineCalendar machines;
    private final AwaitedBook awaited;

    HourQuestions(Crews crews, MachineCalendar machines, AwaitedBook awaited) {
        this.awaited = awaited;
        this.crews = crews;
        this.machines = machines;
    }

    /** @param from first start looked at */
    HourQuestion of(
            ProjectFacts project,
            WindowFinder.Asking asking,
            WindowQuestion days,
            OnSite site,
            Optional<SiteWeather> weather,
            LocalDateTime from) {
        LocalDate first = asking.today().minusDays(DAYS_BESIDE);
        int hours = (int) (days.through().plusDays(2 * DAYS_BESIDE).toEpochDay() - first.toEpochDay()) * 24;
        Optional<WeatherHours> known = weather.map(one -> one.hours(first.atStartOfDay(), hours));
        SiteTimes times = new SiteTimes(site);
        return new HourQuestion(
                asking.today(),
                from,
                days.through().atTime(LAST_START),
                EVERY_MINUTES,
                new HourQuestion.WorkMinutes(
                        asking.expected().low(),
                        asking.expected().typical(),
                        asking.expected().high(),
                        asking.plannedMinutes()),
                days.utility(),
                days.branch(),
                withoutStop(days.earliest()),
                PermitsOfOutage.of(awaited.ofProject(project.id()), asking.today()),
                hands(project, asking, days),
                daylight(project, asking.branch().zone(), first, hours / 24),
                new CustomerDays(
                        days.blackouts(), times.business(), times.present(), site.medical(), site.medicalAgreed()),
                new AnimalDays(times.flockEvents(), times.feedings(), stress(site)),
                times.milk(),
                loads(site, weather.orElse(null), known.orElse(null), first.atStartOfDay(), hours, asking),
                LoadAnswers.generator(site, asking.today(), asking.plannedMinutes()),
                known,
                WeatherLimits.USUAL,
                HourQuestion.WayBack.USUAL,
                days.promise());
    }

    /** Inside another sentence the reason ends without its full stop. */
    private static WindowQuestion.Earliest withoutStop(WindowQuestion.Earliest earliest) {
        String why = earliest.why();
        return new WindowQuestion.Earliest(
                earliest.day(), why.endsWith(".") ? why.substring(0, why.length() - 1) : why);
    }

    /** Cows outdoors or under a roof show stress by this index; birds and pigs are judged by their house. */
    private static OptionalDouble stress(OnSite site) {
        return site.hasMilk() ? OptionalDouble.of(STRESS_THI) : OptionalDouble.empty();
    }

    /** Without weather only what does not ask for it is known; a house then keeps every hour from having a chance. */
    private static List<LoadHours> loads(
            OnSite site,
            @Nullable SiteWeather weather,
            @Nullable WeatherHours known,
            LocalDateTime first,
            int hours,
            WindowFinder.Asking asking) {
        double horizon = Math.min(MOST_HORIZON, Math.max(LEAST_HORIZON, TIMES_PLANNED * asking.plannedMinutes()));
        return weather == null || known == null
                ? LoadAnswers.withoutWeather(site, first, hours)
                : LoadAnswers.hours(site, weather, known, horizon);
    }

    /** Crews that bring two qualified people come first: of two that are free the one is taken that may do the work. */
    private Hands hands(ProjectFacts project, WindowFinder.Asking asking, WindowQuestion days) {
        Map<String, OptionalInt> qualified = crews.crews(asking.branch().id(), asking.today()).stream()
                .collect(Collectors.toMap(
                        crew -> crew.id().toString(),
                        crew -> crew.electricalPeople().map(OptionalInt::of).orElse(OptionalInt.empty())));
        return new Hands(
                days.crews().stream()
                        .map(offer -> new Hands.Crew(offer, qualified.getOrDefault(offer.id(), OptionalInt.empty())))
                        .sorted(Comparator.comparing(crew -> !crew.isEnough()))
                        .toList(),
                machines.needed(project, asking.work().equipment(), asking.today(), days.through()));
    }

    private static Map<LocalDate, Daylight> daylight(ProjectFacts project, ZoneId zone, LocalDate first, int days) {
        Map<LocalDate, Daylight> light = new HashMap<>();
        var latitude = project.site().latitudeDeg();
        var longitude = project.site().longitudeDeg();
        if (latitude != null && longitude != null) {
            Place place = new Place(latitude.doubleValue(), longitude.doubleValue(), 0, 0);
            for (int i = 0; i < days; i++) {
                LocalDate day = first.plusDays(i);
                Daylight.on(day, place, zone).ifPresent(one -> light.put(day, one));
            }
        }
        return light;
    }
}
