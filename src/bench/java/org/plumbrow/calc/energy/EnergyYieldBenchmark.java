package org.plumbrow.calc.energy;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.plumbrow.calc.energy.sun.SunTrack;
import org.plumbrow.calc.energy.weather.InventedWeather;
import org.plumbrow.calc.energy.weather.WeatherYear;

/**
 * One site-year of one array, 8,760 hours, from weather and a sun track that is already there to the AC energy of the
 * year: bar 3 ms. With the site prepared (a second array, another tilt): only the chain. The map of 50 tilts by 36
 * azimuths: bar 2 s. {@code arithmetic} does the chain's additions and multiplications of the same lit hours and nothing
 * else: what the machine's arithmetic alone would take.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
public class EnergyYieldBenchmark {

    private static final int OPERATIONS = 44;

    private WeatherYear weather;
    private SunTrack sun;
    private SiteYear site;
    private ArraySection section;
    private List<InverterGroup> groups;

    @Setup
    public void prepare() {
        weather = InventedWeather.year();
        sun = SunTrack.over(weather.place());
        site = SiteYear.of(weather, sun);
        section = ArraySection.open("one", 100, new Plane(25, 180));
        groups = List.of(new InverterGroup("one", new Inverter(83, 0.96), List.of(section)));
    }

    @Benchmark
    public double siteYear() {
        return EnergyYield.of(SiteYear.of(weather, sun), groups, Losses.USUAL).kwhOfYear();
    }

    @Benchmark
    public double chainOnPreparedSite() {
        return EnergyYield.of(site, groups, Losses.USUAL).kwhOfYear();
    }

    @Benchmark
    public OrientationMap map() {
        return OrientationMap.of(
                site,
                section,
                new Inverter(83, 0.96),
                Losses.USUAL,
                OrientationMap.steps(0, 90, 50),
                OrientationMap.steps(0, 350, 36));
    }

    @Benchmark
    public double arithmetic() {
        double a = 0;
        double b = 0;
        double c = 0;
        double d = 0;
        for (int at = 0; at < site.up.length; at++) {
            double x = site.beam[at];
            for (int operation = 0; operation < OPERATIONS / 8; operation++) {
                a = a * 0.5 + x;
                b = b * 0.5 + x;
                c = c * 0.5 + x;
                d = d * 0.5 + x;
            }
        }
        return a + b + c + d;
    }
}
