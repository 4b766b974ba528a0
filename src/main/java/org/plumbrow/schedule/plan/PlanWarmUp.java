package org.plumbrow.schedule.plan;

import org.plumbrow.calc.planning.PlanCheck;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.SerialPlanner;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/**
 * Plans made-up branches in the background once the program is up, so that nobody's first plan waits until the planner's code
 * is loaded and compiled: that had taken most of its time. It reads and writes nothing, rests after each plan as long as
 * the plan took, and ends after some seconds. {@code plumbrow.plan-warm-up=false} leaves it out.
 */
@Component
@ConditionalOnProperty(name = "plumbrow.plan-warm-up", havingValue = "true", matchIfMissing = true)
class PlanWarmUp {

    private static final int PROJECTS = 300;
    /** By then a plan no longer gets faster. */
    private static final int PLANS = 40;

    @EventListener(ApplicationReadyEvent.class)
    void begin() {
        Thread thread = new Thread(PlanWarmUp::run, "plan-warm-up");
        thread.setDaemon(true);
        thread.setPriority(Thread.MIN_PRIORITY);
        thread.start();
    }

    /** Returns when it is done, or the thread is interrupted. */
    static void run() {
        try {
            for (int plan = 0; plan < PLANS; plan++) {
                long begun = System.nanoTime();
                PlanningProblem problem = MadeUpBranch.of(PROJECTS, plan);
                PlanCheck.breaches(problem, SerialPlanner.plan(problem));
                Thread.sleep(1 + (System.nanoTime() - begun) / 1_000_000);
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }
}
