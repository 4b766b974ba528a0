package org.plumbrow.schedule.plan;

import java.lang.management.ManagementFactory;
import java.util.Locale;
import org.plumbrow.calc.planning.LargeBranch;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.SerialPlanner;

/** The first plan of a branch of so many projects in a program that is up: after {@link PlanWarmUp}, or with a second word without it. */
public final class WarmedPlanFigures {

    private WarmedPlanFigures() {}

    public static void main(String[] arguments) {
        PlanningProblem problem = LargeBranch.of(Integer.parseInt(arguments[0]), 1);
        long before = processor();
        if (arguments.length == 1) {
            PlanWarmUp.run();
        }
        long warmed = processor();
        long begun = System.nanoTime();
        SerialPlanner.plan(problem);
        System.out.printf(
                Locale.ROOT,
                "warm-up %d ms of processor time, first plan %.1f ms, %.1f ms of processor time%n",
                (warmed - before) / 1_000_000,
                (System.nanoTime() - begun) / 1e6,
                (processor() - warmed) / 1e6);
    }

    private static long processor() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
