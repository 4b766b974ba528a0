package org.plumbrow.calc.forecast;

import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
import org.plumbrow.calc.duration.Spread;
import org.plumbrow.calc.planning.Activity;
import org.plumbrow.calc.planning.LargeBranch;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.SerialPlanner;
import org.plumbrow.calc.planning.Work;

/**
 * 10,000 runs of a whole branch with all that goes with them (tables, drivers, every promise). Bar: 0.5 s at 300 projects
 * on two cores, growing with an exponent of at most 1.05.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
public class ForecasterBenchmark {

    @Param({"75", "150", "300", "600"})
    public int projects;

    @Param({"false", "true"})
    public boolean overtaking;

    private ForecastQuestion question;

    @Setup
    public void draw() {
        PlanningProblem problem = LargeBranch.of(projects, 1);
        Map<String, Uncertainty> uncertain = new HashMap<>();
        for (Activity activity : problem.activities()) {
            if (activity.work() instanceof Work.Waiting wait) {
                double days = wait.days();
                uncertain.put(activity.id(), new Uncertainty.OfWait(new Spread(days / 2, days, 2 * days)));
            } else if (activity.work() instanceof Work.ByCrew work) {
                double days = Collections.min(work.halfDaysByCrew().values()) / 2.0;
                uncertain.put(activity.id(), new Uncertainty.Measured(new Spread(0.8 * days, days, 1.4 * days)));
            }
        }
        List<Target> targets = problem.promises().stream()
                .map(promise -> new Target(
                        promise.projectId(),
                        promise.milestone(),
                        promise.activityIds(),
                        Optional.of(promise.date()),
                        true))
                .toList();
        question = new ForecastQuestion(problem, SerialPlanner.plan(problem), uncertain, targets, overtaking);
    }

    @Benchmark
    public Forecast tenThousandRuns() {
        return Forecaster.forecast(question, new Effort(1, 10_000, false));
    }
}
