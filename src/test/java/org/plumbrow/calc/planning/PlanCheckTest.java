package org.plumbrow.calc.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.plumbrow.calc.planning.SmallBranch.afternoon;
import static org.plumbrow.calc.planning.SmallBranch.morning;

import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.planning.Breach.Rule;

/** The checker itself: a good plan, broken on purpose in one place, and the rule that must speak. */
class PlanCheckTest {

    private static final PlanningProblem PROBLEM = problem();
    private static final Plan GOOD = SerialPlanner.plan(PROBLEM);

    /** Posts 1 to 2 March, racking after it, modules by the same crew; wiring; a wait; a pinned cutover; work begun. */
    private static PlanningProblem problem() {
        SmallBranch branch = new SmallBranch()
                .project("s", "Sedge Hollow Dairy")
                .crew("c1", "Crew 1", Set.of("array"))
                .crew("c2", "Crew 2", Set.of("array", "electric"), new Absence(morning(15), afternoon(16), "training"))
                .equipment("driver", 1);
        branch.activity(branch.work("posts", "s", "posts", "array", 4)
                        .with(new EquipmentNeed("driver", 1))
                        .notBefore(afternoon(1)))
                .activity(branch.work("racking", "s", "racking", "array", 4)
                        .inGroup("array")
                        .after(new Predecessor("posts", 2, 0)))
                .activity(branch.work("modules", "s", "modules", "array", 3)
                        .inGroup("array")
                        .after(Predecessor.of("racking")))
                .activity(branch.work("wiring", "s", "wiring", "electric", 2).with(new EquipmentNeed("driver", 1)))
                .activity(SmallBranch.waiting("permit", "s", "permit", 3))
                .activity(branch.work("cutover", "s", "cutover", "electric", 2)
                        .fixed(new Fix.Pinned(morning(17), Optional.of("c2"))));
        return branch.problem();
    }

    @Test
    void theGoodPlanHasNoBreach() {
        assertThat(PlanCheck.breaches(PROBLEM, GOOD)).isEmpty();
    }

    private static Arguments broken(Rule rule, Plan plan, String sentence) {
        return Arguments.of(rule, plan, sentence);
    }

    private static Plan moved(String activity, HalfDay start, HalfDay finish, String crew) {
        Bound bound = GOOD.of(activity).orElseThrow().bound();
        return GOOD.with(new Placement(activity, start, finish, Optional.ofNullable(crew), bound));
    }

    static Stream<Arguments> brokenPlans() {
        Map<String, Placement> without = new LinkedHashMap<>(GOOD.placements());
        without.remove("permit");
        Placement rest = GOOD.of("modules").orElseThrow();
        return Stream.of(
                broken(
                        Rule.MISSING,
                        new Plan(without, GOOD.promises(), List.of()),
                        "Sedge Hollow Dairy, permit has no date and nothing says why."),
                broken(
                        Rule.TOO_EARLY,
                        moved("posts", morning(1), afternoon(2), "c1"),
                        "Sedge Hollow Dairy, posts starts on Mon, Mar 1, morning, before Mon, Mar 1, afternoon."),
                broken(
                        Rule.DAY_OFF,
                        moved("modules", morning(13), morning(16), "c1"),
                        "Sedge Hollow Dairy, modules is planned for Sat, Mar 13, morning, a day off."),
                broken(
                        Rule.ORDER,
                        moved("racking", afternoon(3), morning(5), "c1"),
                        "Sedge Hollow Dairy, racking starts on Wed, Mar 3, afternoon, but Sedge Hollow Dairy, posts comes first and ends at noon on Wed, Mar 3."),
                broken(
                        Rule.DURATION,
                        moved("modules", rest.start(), rest.start(), "c1"),
                        "Sedge Hollow Dairy, modules ends on Mon, Mar 8, afternoon; from Mon, Mar 8, afternoon it takes until Tue, Mar 9, afternoon."),
                broken(
                        Rule.DURATION,
                        moved("permit", morning(1), afternoon(3), null),
                        "Sedge Hollow Dairy, permit ends on Wed, Mar 3, afternoon; from Mon, Mar 1, morning it takes until Thu, Mar 4, afternoon."),
                broken(
                        Rule.NO_CREW,
                        moved("posts", afternoon(1), morning(3), null),
                        "Sedge Hollow Dairy, posts has no crew."),
                broken(
                        Rule.SKILL,
                        moved("wiring", morning(11), afternoon(11), "c1"),
                        "Sedge Hollow Dairy, wiring is given to Crew 1, who may not do it."),
                broken(
                        Rule.CREW_TWICE,
                        moved("wiring", morning(17), afternoon(17), "c2"),
                        "Crew 2 is booked twice on Wed, Mar 17: Sedge Hollow Dairy, wiring and Sedge Hollow Dairy, cutover."),
                broken(
                        Rule.CREW_AWAY,
                        moved("wiring", afternoon(12), morning(15), "c2"),
                        "Sedge Hollow Dairy, wiring is planned for Mon, Mar 15, morning, when Crew 2 is away."),
                broken(
                        Rule.EQUIPMENT,
                        moved("wiring", morning(2), afternoon(2), "c2"),
                        "Sedge Hollow Dairy, posts needs driver on Tue, Mar 2: 2 in use, 1 there."),
                broken(
                        Rule.CONTINUITY,
                        moved("modules", rest.start(), rest.finish(), "c2"),
                        "Sedge Hollow Dairy, racking and Sedge Hollow Dairy, modules are for one crew, but two are booked."),
                broken(
                        Rule.SETTLED,
                        moved("cutover", morning(18), afternoon(18), "c2"),
                        "Sedge Hollow Dairy, cutover is placed on Thu, Mar 18, morning with Crew 2, not as it was settled."));
    }

    @ParameterizedTest(name = "{0}: {2}")
    @MethodSource("brokenPlans")
    void eachKindOfBreachIsCaughtAndSaid(Rule rule, Plan plan, String sentence) {
        assertThat(PlanCheck.breaches(PROBLEM, plan)).anySatisfy(breach -> {
            assertThat(breach.rule()).isEqualTo(rule);
            assertThat(breach.sentence()).isEqualTo(sentence);
        });
    }

    @Test
    void everyRuleIsBrokenAboveAtLeastOnce() {
        Set<Object> broken = new HashSet<>();
        brokenPlans().forEach(arguments -> broken.add(arguments.get()[0]));
        assertThat(broken).containsExactlyInAnyOrderElementsOf(Arrays.asList((Object[]) Rule.values()));
    }
}
