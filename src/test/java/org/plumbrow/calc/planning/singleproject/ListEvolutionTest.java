package org.plumbrow.calc.planning.singleproject;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against published bounds, and against the textbook's definition on made-up projects. */
class ListEvolutionTest {

    @ParameterizedTest
    @CsvSource({"j30, 48", "j60, 48", "j120, 60"})
    void everyTimetableIsSoundAndNoneBeatsAPublishedProof(String set, int count) {
        List<KnownProjects> all = KnownProjects.of(set);

        assertThat(all).hasSize(count).allSatisfy(known -> {
            Timetable found = ListEvolution.best(known.project(), 600, 1);
            assertThat(TimetableCheck.faults(known.project(), found)).isEmpty();
            assertThat(found.makespan()).isGreaterThanOrEqualTo(known.lower());
            assertThat(known.project().criticalPath()).isLessThanOrEqualTo(known.upper());
        });
    }

    /** Published at 5,000 schedules on all 600 of the set: 32.18 % (Debels and Vanhoucke 2007). */
    @Test
    void fiveThousandSchedulesAreAtMost318PercentOverTheCriticalPath() {
        double deviation = KnownProjects.of("j120").stream()
                .mapToDouble(known -> {
                    double path = known.project().criticalPath();
                    return ListEvolution.best(known.project(), 5_000, 1).makespan() / path - 1;
                })
                .average()
                .orElseThrow();

        assertThat(100 * deviation).isLessThanOrEqualTo(31.8);
    }

    @Test
    void theSameSeedGivesTheSameTimetableAndMoreSchedulesNoLongerOneHere() {
        SingleProject project = drawn(new Random(5), 40, 6);

        Timetable once = ListEvolution.best(project, 3_000, 7);

        assertThat(ListEvolution.best(project, 3_000, 7)).isEqualTo(once);
        assertThat(ListEvolution.best(project, 1, 7).makespan()).isGreaterThanOrEqualTo(once.makespan());
    }

    @Test
    void smallProjectsAreSolvedAsTryingEveryOrderSolvesThem() {
        Random random = new Random(11);
        for (int round = 0; round < 300; round++) {
            SingleProject project = drawn(random, 7, 1 + random.nextInt(6));

            Timetable found = ListEvolution.best(project, 2_000, round);

            assertThat(TimetableCheck.faults(project, found)).isEmpty();
            assertThat(found.makespan()).isEqualTo(shortestOfEveryOrder(project));
        }
    }

    /** A hundred periods of one unit: two steps of it never run together; free ones do. */
    @Test
    void aScarceUnitMakesAQueue() {
        SingleProject.Step alone = new SingleProject.Step(3, List.of(1), List.of());
        SingleProject.Step free = new SingleProject.Step(8, List.of(0), List.of());

        Timetable found = ListEvolution.best(new SingleProject(List.of(1), List.of(alone, free, alone, alone)), 100, 1);

        assertThat(found.makespan()).isEqualTo(9);
        assertThat(found.starts().get(1)).isZero();
    }

    @Test
    void aTimetableBrokenOnPurposeIsFound() {
        SingleProject.Step first = new SingleProject.Step(2, List.of(1), List.of(1));
        SingleProject.Step second = new SingleProject.Step(2, List.of(1), List.of());
        SingleProject project = new SingleProject(List.of(1), List.of(first, second, second));

        assertThat(TimetableCheck.faults(project, new Timetable(List.of(0, 2, 4), 6)))
                .isEmpty();
        assertThat(TimetableCheck.faults(project, new Timetable(List.of(0, 1, 4), 6)))
                .containsExactly("step 2 begins before step 1 ends");
        assertThat(TimetableCheck.faults(project, new Timetable(List.of(0, 2, 3), 5)))
                .containsExactly("period 3 takes 2 of resource 1, of which 1 are there");
        assertThat(TimetableCheck.faults(project, new Timetable(List.of(0, 2, 4), 5)))
                .containsExactly("the last step ends at 6, not at 5");
        assertThat(TimetableCheck.faults(project, new Timetable(List.of(-1, 2, 4), 6)))
                .containsExactly("step 1 begins before the project");
        assertThat(TimetableCheck.faults(project, new Timetable(List.of(0), 2)))
                .containsExactly("1 starts for 3 steps");
    }

    static SingleProject drawn(Random random, int size, int resources) {
        List<Integer> capacities = new ArrayList<>();
        for (int resource = 0; resource < resources; resource++) {
            capacities.add(1 + random.nextInt(5));
        }
        List<SingleProject.Step> steps = new ArrayList<>();
        for (int step = 0; step < size; step++) {
            List<Integer> demands = capacities.stream()
                    .map(capacity -> random.nextInt(3) == 0 ? 0 : random.nextInt(capacity + 1))
                    .toList();
            List<Integer> successors = new ArrayList<>();
            for (int later = step + 1; later < size; later++) {
                if (random.nextInt(size) < 2) {
                    successors.add(later);
                }
            }
            steps.add(new SingleProject.Step(random.nextInt(6), demands, successors));
        }
        return new SingleProject(capacities, steps);
    }

    /** Some order gives a shortest timetable by serial generation (Kolisch 1996). */
    private static int shortestOfEveryOrder(SingleProject project) {
        List<Integer> order = new ArrayList<>(project.order());
        int[] shortest = {Integer.MAX_VALUE};
        tryFrom(project, ProjectArrays.of(project), order, 0, shortest);
        return shortest[0];
    }

    private static void tryFrom(
            SingleProject project, ProjectArrays arrays, List<Integer> order, int from, int[] shortest) {
        if (from == order.size()) {
            int[] places = order.stream().mapToInt(Integer::intValue).toArray();
            shortest[0] = Math.min(shortest[0], new SerialGeneration(arrays).generate(places, new int[project.size()]));
            return;
        }
        for (int at = from; at < order.size(); at++) {
            int step = order.get(at);
            if (order.subList(from, order.size()).stream()
                    .noneMatch(other -> project.steps().get(other).successors().contains(step))) {
                Collections.swap(order, from, at);
                tryFrom(project, arrays, order, from + 1, shortest);
                Collections.swap(order, from, at);
            }
        }
    }
}
