package org.plumbrow.calc.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.planning.Breach.Rule;
import org.plumbrow.calc.planning.Finding.Kind;

/** What holds for every plan, on thousands of branches drawn from seeds. */
class RandomBranchesTest {

    private static final int BRANCHES = 2_000;

    /** Which finding of the plan may explain which breach: dates and crews that people had settled before. */
    private static final Map<Rule, Set<Kind>> EXPLAINED_BY = new EnumMap<>(Map.of(
            Rule.ORDER, Set.of(Kind.PIN_BEFORE_PREDECESSOR),
            Rule.SETTLED, Set.of(Kind.PIN_TOO_EARLY, Kind.PIN_ON_DAY_OFF, Kind.PIN_DURING_ABSENCE),
            Rule.SKILL, Set.of(Kind.PIN_WITHOUT_SKILL),
            Rule.CREW_TWICE, Set.of(Kind.BOOKED_TWICE),
            Rule.EQUIPMENT, Set.of(Kind.EQUIPMENT_SHORT),
            Rule.CONTINUITY, Set.of(Kind.TWO_CREWS)));

    @Test
    void aBranchWithNothingSettledKeepsEveryRule() {
        LongStream.range(0, BRANCHES).forEach(seed -> {
            PlanningProblem problem = RandomBranch.of(seed, false);
            assertThat(PlanCheck.breaches(problem, SerialPlanner.plan(problem)))
                    .as("seed " + seed)
                    .isEmpty();
        });
    }

    @Test
    void whatPeopleHadSettledIsTheOnlyReasonForABreachAndAFindingSaysSo() {
        LongStream.range(0, BRANCHES).forEach(seed -> {
            PlanningProblem problem = RandomBranch.of(seed, true);
            Plan plan = SerialPlanner.plan(problem);
            assertThat(PlanCheck.breaches(problem, plan))
                    .as("seed " + seed)
                    .allMatch(breach -> explained(breach, problem, plan));
        });
    }

    private static boolean explained(Breach breach, PlanningProblem problem, Plan plan) {
        Set<Kind> kinds = EXPLAINED_BY.getOrDefault(breach.rule(), Set.of());
        return plan.findings().stream()
                .filter(finding -> kinds.contains(finding.kind()))
                .anyMatch(finding -> breach.rule() == Rule.EQUIPMENT
                        || breach.rule() == Rule.CONTINUITY
                        || finding.activityId().equals(breach.activityId())
                        || breach.otherId().filter(finding.activityId()::equals).isPresent());
    }

    /** Said a second time without the checker: counted on a sheet of crews and half-days. */
    @Test
    void noCrewIsEverAtTwoThingsOrAtWorkOnADayOffOrWhenAway() {
        LongStream.range(0, BRANCHES).forEach(seed -> {
            PlanningProblem problem = RandomBranch.of(seed, false);
            Plan plan = SerialPlanner.plan(problem);
            for (Crew crew : problem.crews()) {
                Set<HalfDay> booked = new HashSet<>();
                for (Placement placement : plan.ofCrew(crew.id())) {
                    for (HalfDay at : worked(problem, crew, placement)) {
                        assertThat(booked.add(at))
                                .as("seed %d, %s, %s", seed, crew.name(), at)
                                .isTrue();
                    }
                    assertThat(List.of(placement.start(), placement.finish()))
                            .as("seed %d, %s", seed, placement)
                            .allMatch(at -> problem.calendar().isWorking(at.date()))
                            .noneMatch(at -> crew.absences().stream().anyMatch(absence -> absence.holds(at)));
                }
            }
        });
    }

    private static List<HalfDay> worked(PlanningProblem problem, Crew crew, Placement placement) {
        return Stream.iterate(placement.start(), at -> !at.isAfter(placement.finish()), HalfDay::next)
                .filter(at -> problem.calendar().isWorking(at.date()))
                .filter(at -> crew.absences().stream().noneMatch(absence -> absence.holds(at)))
                .toList();
    }

    @Test
    void equipmentIsNeverInMorePlacesThanThereArePieces() {
        LongStream.range(0, BRANCHES).forEach(seed -> {
            PlanningProblem problem = RandomBranch.of(seed, false);
            Plan plan = SerialPlanner.plan(problem);
            Map<String, Integer> used = new HashMap<>();
            for (Activity activity : problem.activities()) {
                plan.of(activity.id())
                        .ifPresent(placement -> activity.equipment().forEach(need -> {
                            for (HalfDay at = placement.start(); !at.isAfter(placement.finish()); at = at.next()) {
                                used.merge(need.equipmentId() + at, need.count(), Integer::sum);
                            }
                        }));
            }
            Map<String, Integer> owned = new HashMap<>();
            problem.equipment().forEach(kind -> owned.put(kind.id(), kind.count()));
            used.forEach((key, count) -> assertThat(count)
                    .as("seed %d, %s", seed, key)
                    .isLessThanOrEqualTo(owned.get(key.startsWith("rig") ? "rig" : "driver")));
        });
    }

    @Test
    void theSameProblemGivesTheSamePlan() {
        LongStream.range(0, 500)
                .forEach(seed -> assertThat(SerialPlanner.plan(RandomBranch.of(seed, true)))
                        .isEqualTo(SerialPlanner.plan(RandomBranch.of(seed, true))));
    }

    /** Nothing idles without a reason: half a day earlier, with the same crew, always breaks a rule. */
    @Test
    void noCrewsWorkCouldBeginHalfADayEarlier() {
        LongStream.range(0, 1_000).forEach(seed -> {
            PlanningProblem problem = RandomBranch.of(seed, seed % 2 == 1);
            Plan plan = SerialPlanner.plan(problem);
            List<Breach> before = PlanCheck.breaches(problem, plan);
            for (Activity activity : problem.activities()) {
                plan.of(activity.id())
                        .filter(placement -> activity.fix() instanceof Fix.Free)
                        .filter(placement -> placement.crewId().isPresent())
                        .ifPresent(placement -> assertThat(PlanCheck.breaches(
                                        problem, plan.with(halfADayEarlier(problem, activity, placement))))
                                .as("seed %d, %s", seed, placement)
                                .anyMatch(breach -> !before.contains(breach)));
            }
        });
    }

    private static Placement halfADayEarlier(PlanningProblem problem, Activity activity, Placement placement) {
        Crew crew = problem.crews().stream()
                .filter(each -> each.id().equals(placement.crewId().orElseThrow()))
                .findFirst()
                .orElseThrow();
        HalfDay start = placement.start().previous();
        while (!problem.calendar().isWorking(start.date()) || HalfDayCount.isAway(crew, start)) {
            start = start.previous();
        }
        int halfDays = ((Work.ByCrew) activity.work()).halfDaysByCrew().get(crew.id());
        HalfDay finish = new HalfDayCount(problem).finished(start, halfDays, activity, Optional.of(crew));
        return new Placement(activity.id(), start, finish, placement.crewId(), placement.bound());
    }

    /** A bound names what really ends right before: the crew's other work, the predecessor, the absence. */
    @Test
    void whatBindsADateEndsWhereTheSentenceSays() {
        LongStream.range(0, BRANCHES).forEach(seed -> {
            PlanningProblem problem = RandomBranch.of(seed, true);
            Plan plan = SerialPlanner.plan(problem);
            plan.placements()
                    .values()
                    .forEach(placement -> assertThat(isTrue(placement, problem, plan))
                            .as("seed %d, %s", seed, placement)
                            .isTrue());
        });
    }

    private static boolean isTrue(Placement placement, PlanningProblem problem, Plan plan) {
        Bound bound = placement.bound();
        if (bound instanceof Bound.After after) {
            return after.finished()
                            .equals(plan.placements().get(after.activityId()).finish())
                    && problem.activities().stream()
                            .filter(activity -> activity.id().equals(placement.activityId()))
                            .flatMap(activity -> activity.predecessors().stream())
                            .anyMatch(link -> link.activityId().equals(after.activityId()));
        }
        if (bound instanceof Bound.CrewBusy busy) {
            Placement other = plan.placements().get(busy.activityId());
            return placement.crewId().filter(busy.crewId()::equals).isPresent()
                    && other.crewId().filter(busy.crewId()::equals).isPresent()
                    && !busy.until().isAfter(other.finish())
                    && busy.until().isBefore(placement.start());
        }
        if (bound instanceof Bound.CrewAway away) {
            return away.until().isBefore(placement.start())
                    && placement.crewId().filter(away.crewId()::equals).isPresent();
        }
        if (bound instanceof Bound.EquipmentBusy busy) {
            return busy.until().isBefore(placement.start());
        }
        return !(bound instanceof Bound.Today) || !placement.start().isBefore(problem.today());
    }

    @Test
    void theBranchesDrawnHoldEveryKindOfBoundAndFinding() {
        Set<Class<?>> bounds = new HashSet<>();
        Set<Kind> kinds = new HashSet<>();
        LongStream.range(0, BRANCHES).forEach(seed -> {
            Plan plan = SerialPlanner.plan(RandomBranch.of(seed, true));
            plan.placements()
                    .values()
                    .forEach(placement -> bounds.add(placement.bound().getClass()));
            plan.findings().forEach(finding -> kinds.add(finding.kind()));
        });
        assertThat(bounds).doesNotContain(Bound.Kept.class).hasSize(Bound.class.getPermittedSubclasses().length - 1);
        assertThat(kinds)
                .contains(Kind.values()[0])
                .hasSize(Kind.values().length - 1)
                .doesNotContain(Kind.CIRCLE);
    }
}
