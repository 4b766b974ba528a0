package org.plumbrow.calc.outage.ranking;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.plumbrow.calc.outage.Blackout;

/**
 * 10,000 candidate starts of a dairy with a generator, each judged by every rule. {@code slots}: the utility's hours, so that
 * most starts are out; {@code open}: it switches day and night, so that as many as can be are windows. Bar: 1 s.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
public class HourRankingBenchmark {

    @Param({"slots", "open"})
    public String utility;

    private HourQuestion question;

    @Setup
    public void draw() {
        Site site = new Site();
        site.from = Site.DAY.atStartOfDay();
        site.everyMinutes = 5;
        site.through = site.from.plusMinutes(9_999 * 5);
        if (utility.equals("open")) {
            site.slots = List.of(Site.slot("00:00", "23:59"));
            site.light = new Daylight(LocalTime.MIDNIGHT, LocalTime.of(23, 59));
        }
        site.load(120, 300, 600).generator(20, Site.DAY.minusDays(1), Site.DAY.plusDays(7), Site.DAY.plusDays(14));
        site.milk = Optional.of(new MilkDay(
                List.of(
                        new Daily(LocalTime.of(4, 0), LocalTime.of(6, 0), "milking"),
                        new Daily(LocalTime.of(16, 0), LocalTime.of(18, 0), "milking")),
                10,
                4,
                3.5));
        site.animals = new AnimalDays(
                List.of(new AnimalDays.FlockEvent(Site.DAY.plusDays(12).atTime(5, 0), "load-out")),
                List.of(new Daily(LocalTime.of(8, 0), LocalTime.of(8, 20), "feeding")),
                OptionalDouble.of(72));
        site.customer = new CustomerDays(
                List.of(Blackout.allDay(Site.DAY.plusDays(3), Site.DAY.plusDays(3), "a wedding")),
                List.of(),
                List.of(),
                false,
                false);
        question = site.question();
    }

    @Benchmark
    public HourRanking tenThousandStarts() {
        return HourRanking.of(question);
    }
}
