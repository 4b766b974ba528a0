package org.plumbrow.cutover.ridethrough;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.plumbrow.calc.outage.Blackout;
import org.plumbrow.calc.outage.DaySpan;
import org.plumbrow.calc.outage.Slot;
import org.plumbrow.calc.outage.ranking.AnimalDays.FlockEvent;
import org.plumbrow.calc.outage.ranking.Daily;
import org.plumbrow.calc.outage.ranking.MilkDay;
import org.plumbrow.design.part.Cells;

/** Milkings, feedings, business hours and flock events of a site, from what people wrote. */
public record SiteTimes(OnSite site) {

    /** Tank thermostats are set to this (common practice), degC. */
    private static final double STORED_C = 3.3;

    public List<Daily> feedings() {
        return of("FEEDING").map(row -> daily(row, row.text("mark"))).toList();
    }

    public List<FlockEvent> flockEvents() {
        return of("FLOCK")
                .map(row -> new FlockEvent(
                        Objects.requireNonNull(row.date("date")).atTime(time(row, "from")), row.text("mark")))
                .toList();
    }

    /** School and business hours outside the vacations. */
    public List<Blackout> business() {
        return of("BUSINESS")
                .map(row -> Blackout.weekly(weekdays(row), time(row, "from"), time(row, "to"), row.text("mark")))
                .flatMap(hours -> hours.outside(closed()).stream())
                .toList();
    }

    List<DaySpan> closed() {
        return of("CLOSED")
                .map(row -> new DaySpan(
                        Objects.requireNonNull(row.date("date")), Objects.requireNonNull(row.date("lastDate"))))
                .toList();
    }

    public List<Slot> present() {
        return of("PRESENT")
                .map(row -> new Slot(weekdays(row), time(row, "from"), time(row, "to"), Optional.empty()))
                .toList();
    }

    public Optional<MilkDay> milk() {
        return site.only(LoadKind.TANK)
                .map(tank -> new MilkDay(
                        milkings(tank),
                        UsUnits.degC(tank.number("afterF", 0)),
                        UsUnits.kelvin(tank.number("coolingF", 1)),
                        Math.min(STORED_C, Math.max(0, UsUnits.degC(tank.number("milkF", 0))))));
    }

    static List<Daily> milkings(Cells tank) {
        List<Daily> milkings = new ArrayList<>();
        milkings.add(new Daily(time(tank, "from1"), time(tank, "to1"), "milking"));
        if (!tank.isEmpty("from2") || !tank.isEmpty("to2")) {
            milkings.add(new Daily(time(tank, "from2"), time(tank, "to2"), "milking"));
        }
        return milkings;
    }

    private Stream<Cells> of(String what) {
        return site.rows(LoadKind.TIMES).stream().filter(row -> row.text("what").equals(what));
    }

    private static Daily daily(Cells row, String words) {
        return new Daily(time(row, "from"), time(row, "to"), words);
    }

    private static Set<DayOfWeek> weekdays(Cells row) {
        return row.text("weekdays").equals("WEEKDAYS")
                ? EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY)
                : EnumSet.allOf(DayOfWeek.class);
    }

    private static LocalTime time(Cells row, String name) {
        return Objects.requireNonNull(row.time(name));
    }
}
