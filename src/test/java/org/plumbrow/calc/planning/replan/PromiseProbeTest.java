package org.plumbrow.calc.planning.replan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.planning.Guidance;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.PromiseOutcome;
import org.plumbrow.calc.planning.Published;
import org.plumbrow.calc.planning.SerialPlanner;
import org.plumbrow.calc.planning.SmallBranch;

class PromiseProbeTest {

    private static final HalfDay FAR = HalfDay.afternoon(LocalDate.of(2027, 5, 1));

    /** Works of one skill for the given crews, in the order of the list: half-days and the promised day of March. */
    private static PlanningProblem branch(int crews, int[][] works) {
        SmallBranch branch = new SmallBranch();
        for (int crew = 1; crew <= crews; crew++) {
            branch.crew("crew-" + crew, "Crew " + crew, Set.of("roof"));
        }
        for (int at = 0; at < works.length; at++) {
            String id = String.valueOf((char) ('A' + at));
            branch.project(id, "Job " + id)
                    .activity(branch.work(id, id, "roof array", "roof", works[at][0]))
                    .promise(id, id, works[at][1]);
        }
        return branch.problem();
    }

    /** As people know it: in the order of the list. */
    private static Published inTurn(PlanningProblem problem) {
        Map<String, Guidance.Guide> guides = new HashMap<>();
        for (int at = 0; at < problem.activities().size(); at++) {
            guides.put(problem.activities().get(at).id(), new Guidance.Guide(at, Optional.empty(), Optional.empty()));
        }
        return new Published(SerialPlanner.plan(problem, new Guidance(guides)), FAR);
    }

    private static Prospect prospect(PlanningProblem problem, String project) {
        return PromiseProbe.of(problem, inTurn(problem), project).orElseThrow();
    }

    @Test
    void aPromiseThatHoldsSaysHowMuchLaterItsLastWorkMayEnd() {
        Prospect prospect = prospect(branch(1, new int[][] {{2, 3}}), "A");
        assertThat(prospect.kind()).isEqualTo(Prospect.Kind.KEPT);
        assertThat(prospect.halfDays()).as("all of Tuesday and Wednesday").isEqualTo(4);
    }

    @Test
    void workThatIsLongerThanTheTimeLeftIsNeverKept() {
        Prospect prospect = prospect(branch(2, new int[][] {{2, 9}, {6, 2}}), "B");
        assertThat(prospect.kind()).isEqualTo(Prospect.Kind.NEVER);
        assertThat(prospect.halfDays()).as("Wednesday").isEqualTo(2);
    }

    @Test
    void aJobBehindOneThatHasTimeCanBeKeptFreely() {
        Prospect prospect = prospect(branch(1, new int[][] {{2, 9}, {2, 1}}), "B");
        assertThat(prospect.kind()).isEqualTo(Prospect.Kind.FREELY);
        assertThat(prospect.moved()).isEqualTo(2);
    }

    @Test
    void twoJobsPromisedForTheSameDayOfOneCrewAreProvedApart() {
        Prospect prospect = prospect(branch(1, new int[][] {{2, 1}, {2, 1}}), "B");
        assertThat(prospect.kind()).isEqualTo(Prospect.Kind.AT_A_PRICE);
        assertThat(prospect.breaking()).hasSize(1);
        assertThat(prospect.breaking().get(0).promise().projectId()).isEqualTo("A");
        assertThat(prospect.breaking().get(0).halfDaysLate()).isEqualTo(2);
        assertThat(prospect.provedTogether()).isTrue();
    }

    /** Every sequence with every choice of crews: each set of promises that some plan keeps. */
    private static Set<Set<String>> keptSets(PlanningProblem problem) {
        Set<Set<String>> sets = new HashSet<>();
        List<String> ids = problem.activities().stream().map(one -> one.id()).toList();
        int crews = problem.crews().size();
        int choices = (int) Math.round(Math.pow(crews, ids.size()));
        for (List<String> turn : turns(ids)) {
            for (int choice = 0; choice < choices; choice++) {
                Map<String, Guidance.Guide> guides = new HashMap<>();
                int left = choice;
                for (int at = 0; at < turn.size(); at++) {
                    String crew = problem.crews().get(left % crews).id();
                    left /= crews;
                    guides.put(turn.get(at), new Guidance.Guide(at, Optional.of(crew), Optional.empty()));
                }
                Set<String> kept = new HashSet<>();
                SerialPlanner.plan(problem, new Guidance(guides)).promises().stream()
                        .filter(PromiseOutcome::holds)
                        .forEach(one -> kept.add(one.promise().projectId()));
                sets.add(kept);
            }
        }
        return sets;
    }

    private static List<List<String>> turns(List<String> ids) {
        if (ids.isEmpty()) {
            return List.of(List.of());
        }
        List<List<String>> all = new ArrayList<>();
        for (String first : ids) {
            for (List<String> rest :
                    turns(ids.stream().filter(id -> !id.equals(first)).toList())) {
                List<String> turn = new ArrayList<>(List.of(first));
                turn.addAll(rest);
                all.add(turn);
            }
        }
        return all;
    }

    /** What is said is held against all plans of small random branches. */
    @Test
    void nothingIsSaidThatAPlanOfAllPlansContradicts() {
        Random random = new Random(7);
        Map<Prospect.Kind, Integer> seen = new HashMap<>();
        int proved = 0;
        for (int branch = 0; branch < 120; branch++) {
            int[][] works = new int[4][];
            for (int at = 0; at < works.length; at++) {
                works[at] = new int[] {1 + random.nextInt(4), 1 + random.nextInt(4)};
            }
            PlanningProblem problem = branch(1 + random.nextInt(2), works);
            Set<Set<String>> sets = keptSets(problem);
            Plan known = inTurn(problem).plan();
            for (String id : List.of("A", "B", "C", "D")) {
                Prospect prospect = prospect(problem, id);
                seen.merge(prospect.kind(), 1, Integer::sum);
                proved += prospect.provedTogether() ? 1 : 0;
                holds(prospect, sets, known);
            }
        }
        assertThat(seen.keySet())
                .contains(Prospect.Kind.KEPT, Prospect.Kind.NEVER, Prospect.Kind.FREELY, Prospect.Kind.AT_A_PRICE);
        assertThat(proved).isPositive();
    }

    private static void holds(Prospect prospect, Set<Set<String>> sets, Plan known) {
        String id = prospect.promise().projectId();
        boolean possible = sets.stream().anyMatch(kept -> kept.contains(id));
        switch (prospect.kind()) {
            case NEVER -> assertThat(possible).isFalse();
            case KEPT, FREELY, AT_A_PRICE -> assertThat(possible).isTrue();
            case NOT_FOUND ->
                assertThat(id).as("served first, a lone work is always found").isEmpty();
        }
        Set<String> together = new HashSet<>(Set.of(id));
        prospect.breaking().stream()
                .filter(one -> one.was() == 0)
                .forEach(one -> together.add(one.promise().projectId()));
        if (prospect.provedTogether()) {
            assertThat(sets).as("proved apart").noneMatch(kept -> kept.containsAll(together));
        }
        if (prospect.kind() == Prospect.Kind.FREELY) {
            Set<String> all = new HashSet<>(Set.of(id));
            known.promises().stream()
                    .filter(PromiseOutcome::holds)
                    .forEach(one -> all.add(one.promise().projectId()));
            assertThat(sets).as("kept beside all that held").anyMatch(kept -> kept.containsAll(all));
        }
    }
}
