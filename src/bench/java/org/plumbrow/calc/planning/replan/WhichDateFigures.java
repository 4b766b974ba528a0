package org.plumbrow.calc.planning.replan;

import java.lang.management.ManagementFactory;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.duration.Spread;
import org.plumbrow.calc.forecast.Effort;
import org.plumbrow.calc.forecast.Forecast;
import org.plumbrow.calc.forecast.ForecastQuestion;
import org.plumbrow.calc.forecast.Forecaster;
import org.plumbrow.calc.forecast.Target;
import org.plumbrow.calc.forecast.Uncertainty;
import org.plumbrow.calc.planning.Activity;
import org.plumbrow.calc.planning.LargeBranch;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.Promise;
import org.plumbrow.calc.planning.Published;
import org.plumbrow.calc.planning.SerialPlanner;
import org.plumbrow.calc.planning.Work;

/**
 * "If this customer signs today, which date can we promise?": both plans (with and without the job, all that is known kept)
 * and 10,000 runs for the job's milestone, in milliseconds. Argument: projects. Bar: 2 s at 300.
 */
public final class WhichDateFigures {

    private static final int TIMES = 6;

    private WhichDateFigures() {}

    public static void main(String[] arguments) {
        int size = Integer.parseInt(arguments[0]);
        PlanningProblem with = LargeBranch.of(size + 1, 1);
        String thought = with.projects().get(size).id();
        PlanningProblem without = without(with, id -> !id.equals(thought));
        Published known = new Published(
                SerialPlanner.plan(without),
                HalfDay.afternoon(with.today().date().plusWeeks(8)));
        System.out.println("projects plans (of them on the processor) forecast all (ms, the first one cold)");
        for (int time = 0; time < TIMES; time++) {
            long begun = System.nanoTime();
            long used = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            Plan plan = LeastChange.plan(with, known);
            LeastChange.plan(without, known);
            long planned = System.nanoTime();
            used = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - used;
            Forecast forecast = Forecaster.forecast(question(with, plan, thought), new Effort(1, 10_000, false));
            long done = System.nanoTime();
            System.out.printf(
                    Locale.ROOT,
                    "%d %.0f (%.0f) %.0f %.0f (%d runs)%n",
                    size,
                    (planned - begun) / 1e6,
                    used / 1e6,
                    (done - planned) / 1e6,
                    (done - begun) / 1e6,
                    forecast.runs());
        }
    }

    private static PlanningProblem without(PlanningProblem whole, Predicate<String> stays) {
        return new PlanningProblem(
                whole.calendar(),
                whole.today(),
                whole.lastDay(),
                whole.projects().stream()
                        .filter(project -> stays.test(project.id()))
                        .toList(),
                whole.activities().stream()
                        .filter(activity -> stays.test(activity.projectId()))
                        .toList(),
                whole.crews(),
                whole.equipment(),
                whole.promises().stream()
                        .filter(promise -> stays.test(promise.projectId()))
                        .toList(),
                whole.weather());
    }

    private static ForecastQuestion question(PlanningProblem problem, Plan plan, String thought) {
        Map<String, Uncertainty> uncertain = new HashMap<>();
        for (Activity activity : problem.activities()) {
            if (activity.work() instanceof Work.Waiting wait) {
                double days = wait.days();
                uncertain.put(activity.id(), new Uncertainty.OfWait(new Spread(days / 2, days, 2 * days)));
            } else if (activity.work() instanceof Work.ByCrew work) {
                double days =
                        work.halfDaysByCrew().values().stream().findFirst().orElse(2) / 2.0;
                uncertain.put(activity.id(), new Uncertainty.Measured(new Spread(0.8 * days, days, 1.4 * days)));
            }
        }
        Promise promise = problem.promises().stream()
                .filter(one -> one.projectId().equals(thought))
                .findFirst()
                .orElseThrow();
        return new ForecastQuestion(
                problem,
                plan,
                uncertain,
                List.of(new Target(
                        thought, promise.milestone(), promise.activityIds(), Optional.of(promise.date()), true)),
                false);
    }
}
