package org.plumbrow.calc.energy;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.plumbrow.calc.energy.sun.Place;
import org.plumbrow.calc.energy.sun.SunTrack;

/** The sun of one year over one place, 8,760 positions. Bar: at most 50 ms. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class SunTrackBenchmark {

    @Benchmark
    public SunTrack year() {
        return SunTrack.over(new Place(41.98, -87.92, 201, -6));
    }
}
