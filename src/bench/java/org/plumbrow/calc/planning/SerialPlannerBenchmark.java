package org.plumbrow.calc.planning;

import java.util.List;
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

/**
 * One plan of a whole branch, from the problem's records to the plan, five years of calendar included; and one check of
 * it. Bar: 300 projects well under 100 ms warm.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class SerialPlannerBenchmark {

    @Param({"20", "60", "150", "300", "600"})
    public int projects;

    private PlanningProblem problem;
    private Plan plan;

    @Setup
    public void draw() {
        problem = LargeBranch.of(projects, 1);
        plan = SerialPlanner.plan(problem);
    }

    @Benchmark
    public Plan plan() {
        return SerialPlanner.plan(problem);
    }

    @Benchmark
    public List<Breach> check() {
        return PlanCheck.breaches(problem, plan);
    }
}
