package org.plumbrow.calc.planning.singleproject.proof;

import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import org.plumbrow.calc.planning.exact.PieceSolver;
import org.plumbrow.calc.planning.singleproject.ListEvolution;
import org.plumbrow.calc.planning.singleproject.SingleProject;
import org.plumbrow.calc.planning.singleproject.Timetable;

/**
 * Narrows the gap between a known timetable and a lower bound from both sides, on three threads: one looks for shorter
 * timetables, two raise the bound. Where they meet all end. Three also on two cores: none is of use for every project.
 */
public final class MakespanProof {

    /** Schedules of the first search here, which also tells how many the time holds. */
    private static final long FIRST_SCHEDULES = 20_000;

    /** Of the time left: what the second search takes, and every later one. */
    private static final double SECOND_SHARE = 0.1;

    private static final double LATER_SHARE = 0.95;

    /** After so many schedules for each pair of steps the search leaves its core to the bound. */
    private static final long MOST_PER_PAIR = 300;

    private static final long LOOK_AGAIN_MILLIS = 20;

    private final SingleProject project;
    private final Standing standing;
    private final int seed;

    private MakespanProof(SingleProject project, Standing standing, int seed) {
        this.project = project;
        this.standing = standing;
        this.seed = seed;
    }

    /** Whether this machine has the solver's library. */
    public static boolean isThere() {
        return PieceSolver.isThere();
    }

    /**
     * @param known a timetable without faults
     * @param seconds at most, by the clock
     * @param clock nanoseconds since any moment; as it decides when the search ends, two runs may differ
     */
    public static ProvenTimetable run(
            SingleProject project, Timetable known, double seconds, int seed, LongSupplier clock) {
        if (known.makespan() == project.criticalPath()) {
            return new ProvenTimetable(known, known.makespan());
        }
        if (!isThere()) {
            throw new IllegalStateException("the solver's library is missing");
        }
        Standing standing = new Standing(known, project.criticalPath(), seconds, clock);
        new MakespanProof(project, standing, seed).run();
        return standing.proven();
    }

    private void run() {
        BoundClimb climb = new BoundClimb(project, standing, seed);
        Relaxation relaxation = new Relaxation(project, standing, seed);
        ScheduledExecutorService threads = Executors.newScheduledThreadPool(3);
        try {
            List<Future<?>> bounds = List.of(threads.submit(relaxation), threads.submit(climb));
            Future<?> lookingAgain = threads.scheduleWithFixedDelay(
                    () -> {
                        climb.stopWhenAnswered();
                        relaxation.stopWhenOver();
                    },
                    LOOK_AGAIN_MILLIS,
                    LOOK_AGAIN_MILLIS,
                    TimeUnit.MILLISECONDS);
            search();
            for (Future<?> bound : bounds) {
                bound.get();
            }
            lookingAgain.cancel(true);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException e) {
            throw new IllegalStateException("the bound could not be raised", e.getCause());
        } finally {
            threads.shutdownNow();
        }
    }

    private void search() {
        long most = MOST_PER_PAIR * project.size() * project.size();
        long schedules = FIRST_SCHEDULES;
        double share = SECOND_SHARE;
        for (int round = 1; most > 0 && !standing.isOver(); round++) {
            double before = standing.secondsLeft();
            ListEvolution.best(project, schedules, (long) seed + round, standing);
            double perSecond = schedules / Math.max(1e-3, before - standing.secondsLeft());
            most -= schedules;
            schedules = Math.max(FIRST_SCHEDULES, Math.min(most, (long) (share * perSecond * standing.secondsLeft())));
            share = LATER_SHARE;
        }
    }
}
