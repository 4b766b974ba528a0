package org.plumbrow.calc.planning;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Dates;
import org.plumbrow.calc.planning.search.Decoder;
import org.plumbrow.calc.planning.search.Order;
import org.plumbrow.calc.planning.search.Task;

/**
 * A random branch cut down to a handful of works, with promises so early that some are late, and its best plan by trying
 * everything: each sequence of the works with each choice of crews. Serial placing of all sequences meets an optimum of
 * every measure that never gets better by a later finish.
 */
public final class TightBranch {

    private static final int WORKS = 5;
    private static final int MOST_TRIES = 6_000;

    public final BranchModel model;
    private final Decoder decoder;
    private final int[] works;
    private final Order order;
    private final Dates tried;
    public final Dates best;
    private long least = Long.MAX_VALUE;

    private TightBranch(PlanningProblem problem) {
        model = BranchModel.of(problem, SerialPlanner.plan(problem), Optional.empty());
        decoder = new Decoder(model);
        tried = decoder.emptyDates();
        best = decoder.emptyDates();
        order = new Order(new int[model.size()], new int[model.size()], new int[model.size()]);
        works = IntStream.range(0, model.size())
                .filter(number -> model.tasks[number].kind == Task.Kind.CREW)
                .toArray();
    }

    public static TightBranch of(long seed) {
        return new TightBranch(cut(RandomBranch.of(seed, seed % 3 == 0), seed));
    }

    private static PlanningProblem cut(PlanningProblem whole, long seed) {
        Map<String, List<Activity>> byProject = new HashMap<>();
        whole.activities()
                .forEach(activity -> byProject
                        .computeIfAbsent(activity.projectId(), none -> new ArrayList<>())
                        .add(activity));
        Set<String> kept = new HashSet<>();
        int works = 0;
        for (int at = 0; at < 10 && works < WORKS; at++) {
            for (List<Activity> own : byProject.values()) {
                if (at < own.size() && works < WORKS) {
                    kept.add(own.get(at).id());
                    works += own.get(at).work() instanceof Work.ByCrew ? 1 : 0;
                }
            }
        }
        return new PlanningProblem(
                whole.calendar(),
                whole.today(),
                whole.lastDay(),
                whole.projects(),
                whole.activities().stream()
                        .filter(activity -> kept.contains(activity.id()))
                        .toList(),
                whole.crews(),
                whole.equipment(),
                promises(byProject, kept, whole, seed),
                whole.weather());
    }

    /** Some of the last one, some of the last two, some projects with a promise in between as well. */
    private static List<Promise> promises(
            Map<String, List<Activity>> byProject, Set<String> kept, PlanningProblem whole, long seed) {
        List<Promise> promises = new ArrayList<>();
        byProject.forEach((project, all) -> {
            List<String> own =
                    all.stream().map(Activity::id).filter(kept::contains).toList();
            long draw = seed * 31 + project.hashCode();
            if (!own.isEmpty()) {
                int last = own.size() - 1;
                List<String> held =
                        draw % 3 == 0 && last > 0 ? own.subList(last - 1, last + 1) : List.of(own.get(last));
                var date = whole.today().date().plus(Math.floorMod(draw, 12), ChronoUnit.DAYS);
                promises.add(new Promise(project, "system on", held, date, 1 + Math.floorMod(draw, 4)));
                if (draw % 4 == 0) {
                    promises.add(new Promise(project, "built", List.of(own.get(last / 2)), date.minusDays(2), 2));
                }
            }
        });
        return promises;
    }

    /** @return whether everything was tried and some plan places all */
    public boolean solve() {
        long tries = 1;
        for (int at = 0; at < works.length; at++) {
            tries *= (long) (at + 1) * Math.max(1, model.tasks[works[at]].crews.length);
        }
        if (tries > MOST_TRIES || works.length == 0) {
            return false;
        }
        chooseCrew(0);
        return least < Long.MAX_VALUE;
    }

    public long least() {
        return least;
    }

    private void chooseCrew(int at) {
        if (at == works.length) {
            permute(0, new boolean[works.length]);
            return;
        }
        for (int crew : model.tasks[works[at]].crews) {
            order.crew()[works[at]] = crew;
            chooseCrew(at + 1);
        }
    }

    private void permute(int at, boolean[] used) {
        if (at == works.length) {
            decoder.decode(order, tried);
            if (tried.unplaced() == 0 && tried.lateness() < least) {
                least = tried.lateness();
                best.take(tried);
            }
            return;
        }
        for (int next = 0; next < works.length; next++) {
            if (!used[next]) {
                used[next] = true;
                order.key()[works[next]] = at + 1;
                permute(at + 1, used);
                used[next] = false;
            }
        }
    }
}
