package org.plumbrow.cutover.ridethrough;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.plumbrow.calc.outage.ranking.GeneratorDays;
import org.plumbrow.calc.outage.ranking.LoadHours;
import org.plumbrow.calc.outage.ranking.LoadHours.Stands;
import org.plumbrow.calc.outage.ranking.WeatherHours;
import org.plumbrow.calc.ridethrough.GeneratorCover;
import org.plumbrow.calc.ridethrough.RideThrough;
import org.plumbrow.design.part.Cells;

/** How long everything on a site stands, hour by hour. */
public final class LoadAnswers {

    private LoadAnswers() {}

    /** Where nothing is open, the closed house; a tank and a home do not ask for the weather. */
    static RideThrough stands(LoadKind kind, Cells row, HourOutside outside, double horizonMinutes) {
        return switch (kind) {
            case HOUSES -> house(new HouseLoad(row), outside, horizonMinutes);
            case STORES -> StoreLoads.storeStands(row, outside);
            case GREENHOUSES -> StoreLoads.greenhouseStands(row, outside);
            case TANK -> StoreLoads.tankStands(row);
            case HOME -> StoreLoads.homeStands(row);
            case GENERATOR, LOADS, TIMES -> throw new IllegalArgumentException(kind + " does not suffer");
        };
    }

    private static RideThrough house(HouseLoad house, HourOutside outside, double horizonMinutes) {
        return house.stands(house.opens() ? house.opened() : house.closed(), outside, horizonMinutes);
    }

    /**
     * Every load in every hour of that weather; the hour's weather is taken to the careful side in coarse steps.
     *
     * @param horizonMinutes how far to look into each outage
     */
    public static List<LoadHours> hours(OnSite site, SiteWeather weather, WeatherHours hours, double horizonMinutes) {
        List<HourOutside> outside =
                weather.outside(hours).stream().map(HourOutside::coarse).toList();
        List<LoadHours> loads = new ArrayList<>();
        for (LoadKind kind : List.of(LoadKind.HOUSES, LoadKind.STORES, LoadKind.GREENHOUSES)) {
            Map<Cells, Map<HourOutside, Stands>> known = new HashMap<>();
            for (Cells row : site.rows(kind)) {
                Map<HourOutside, Stands> ofRow = known.computeIfAbsent(row.with("mark", ""), same -> new HashMap<>());
                loads.add(new LoadHours(
                        row.text("mark"),
                        hours.first(),
                        outside.stream()
                                .map(hour -> ofRow.computeIfAbsent(
                                        hour, one -> Stands.of(stands(kind, row, one, horizonMinutes))))
                                .toList()));
            }
        }
        loads.addAll(always(site, hours.first(), hours.hours().size()));
        return loads;
    }

    /** What does not ask for the weather; of what does no hour is known. */
    public static List<LoadHours> withoutWeather(OnSite site, LocalDateTime first, int hours) {
        List<LoadHours> loads = new ArrayList<>(always(site, first, hours));
        for (LoadKind kind : List.of(LoadKind.HOUSES, LoadKind.STORES, LoadKind.GREENHOUSES)) {
            site.rows(kind).forEach(row -> loads.add(new LoadHours(row.text("mark"), first, List.of())));
        }
        return loads;
    }

    private static List<LoadHours> always(OnSite site, LocalDateTime first, int hours) {
        List<LoadHours> loads = new ArrayList<>();
        site.only(LoadKind.TANK)
                .ifPresent(tank -> loads.add(LoadHours.always(StoreLoads.tankStands(tank), first, hours)));
        site.only(LoadKind.HOME)
                .map(StoreLoads::homeStands)
                .filter(RideThrough::hasFigure)
                .ifPresent(home -> loads.add(LoadHours.always(home, first, hours)));
        return loads;
    }

    public static Optional<GeneratorDays> generator(OnSite site, LocalDate day, double outageMinutes) {
        return generatorOf(site)
                .map(generator -> new GeneratorDays(generator.cover(day, outageMinutes), generator.runs()));
    }

    /** Is the run under load that counts for that day one that is only planned as of today? */
    public static boolean runIsAhead(OnSite site, LocalDate day, LocalDate today) {
        return generatorOf(site)
                .map(generator -> generator.runs().stream()
                        .filter(run -> !run.isAfter(day))
                        .filter(run ->
                                run.plusDays(GeneratorCover.RUN_WITHIN_DAYS).compareTo(day) >= 0)
                        .toList())
                .map(counting -> !counting.isEmpty() && counting.stream().allMatch(run -> run.isAfter(today)))
                .orElse(false);
    }

    static Optional<GeneratorLoad> generatorOf(OnSite site) {
        return site.only(LoadKind.GENERATOR).map(cells -> new GeneratorLoad(cells, site.rows(LoadKind.LOADS)));
    }
}
