package org.plumbrow.calc.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.calendar.WorkingCalendar;
import org.plumbrow.calc.duration.Spread;
import org.plumbrow.calc.planning.Absence;
import org.plumbrow.calc.planning.Activity;
import org.plumbrow.calc.planning.Crew;
import org.plumbrow.calc.planning.Equipment;
import org.plumbrow.calc.planning.EquipmentNeed;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.Predecessor;
import org.plumbrow.calc.planning.Project;
import org.plumbrow.calc.planning.RandomBranch;
import org.plumbrow.calc.planning.SerialPlanner;
import org.plumbrow.calc.planning.WeatherAllowance;
import org.plumbrow.calc.planning.Work;

/**
 * A crew that goes to its next work while an earlier one waits. Every day works here, so that a date is today plus days;
 * what is expected is counted by hand.
 */
class OvertakingTest {

    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final Effort MANY = new Effort(7, 20_000, false);
    private static final Uncertainty PERMIT = new Uncertainty.OfWait(new Spread(1, 4, 30));

    private static PlanningProblem branch(List<Equipment> equipment, Activity... activities) {
        return new PlanningProblem(
                WorkingCalendar.EVERY_DAY,
                HalfDay.morning(TODAY),
                TODAY.plusYears(2),
                List.of(new Project("p", "North barn")),
                List.of(activities),
                List.of(new Crew("c", "Crew 1", Set.of("array"), List.of())),
                equipment,
                List.of(),
                WeatherAllowance.NONE);
    }

    private static Activity work(String id, int halfDays) {
        return Activity.of(id, "p", id, new Work.ByCrew(Set.of("array"), Map.of("c", halfDays)));
    }

    /** A permit planned for four days, posts of two days behind it, and later in the plan a roof of six days. */
    private static final PlanningProblem POSTS_AND_ROOF = branch(
            List.of(),
            Activity.of("permit", "p", "permit", new Work.Waiting(4, WorkingCalendar.EVERY_DAY, false)),
            work("posts", 4).after(Predecessor.of("permit")),
            work("roof", 12).notBefore(HalfDay.morning(TODAY.plusDays(7))));

    private static TargetForecast roof(boolean overtaking, int keptDays) {
        var target = new Target("p", "roof", List.of("roof"), Optional.of(TODAY.plusDays(keptDays)), true);
        return Forecaster.forecast(
                        new ForecastQuestion(
                                POSTS_AND_ROOF,
                                SerialPlanner.plan(POSTS_AND_ROOF),
                                Map.of("permit", PERMIT),
                                List.of(target),
                                overtaking),
                        MANY)
                .of(target)
                .orElseThrow();
    }

    /**
     * Posts take the days p + 1 and p + 2 after a permit of p days; the roof is let in on day 7 and takes six days. In the
     * plan's order it is done by day 12 if p + 2 is before day 7, that is p of at most 4. Overtaking it also is where the
     * posts begin after day 12, that is p of at least 12; else they come first in the plan, and stand in its way.
     */
    @Test
    void theRoofDoesNotWaitForAPermitThatIsVeryLate() {
        double inOrder = PERMIT.share(4.5);
        assertThat(roof(false, 12).chanceKept().orElseThrow()).isCloseTo(inOrder, within(0.01));
        assertThat(roof(true, 12).chanceKept().orElseThrow()).isCloseTo(inOrder + 1 - PERMIT.share(11.5), within(0.01));
    }

    /** Late is the roof only where the posts hold the crew from it, so they and their permit drive every late run. */
    @Test
    void whoHeldTheCrewIsADriver() {
        assertThat(roof(true, 12).drivers())
                .extracting(Driver::activityId)
                .containsExactlyInAnyOrder("roof", "posts", "permit");
        assertThat(roof(true, 12).drivers()).allMatch(driver -> driver.share() == 1);
    }

    /** The only trencher is lent out until day 9: what needs it begins on day 10 and ends with day 11. */
    @Test
    void aPieceThatIsLentOutIsWaitedFor() {
        var lentOut = new Equipment.Away(
                1, new Absence(HalfDay.morning(TODAY), HalfDay.afternoon(TODAY.plusDays(9)), "lent out"));
        PlanningProblem trenching = branch(
                List.of(new Equipment("t", "Trencher", 1, List.of(lentOut))),
                work("trench", 4).with(new EquipmentNeed("t", 1)));
        var target = new Target("p", "trench", List.of("trench"), Optional.empty(), false);
        var question = new ForecastQuestion(trenching, SerialPlanner.plan(trenching), Map.of(), List.of(target), true);
        assertThat(Forecaster.forecast(question, Effort.USUAL)
                        .of(target)
                        .orElseThrow()
                        .evenChance())
                .isEqualTo(TODAY.plusDays(11));
    }

    /** Where everything takes as long as planned, a run plays the plan, or is earlier where the plan left a gap. */
    @Test
    void withoutUncertaintyNothingIsLaterThanPlanned() {
        int all = 0;
        int alike = 0;
        for (long seed = 0; seed < 800; seed++) {
            PlanningProblem drawn = ForecasterTest.fair(RandomBranch.of(seed, seed % 2 == 0));
            Plan plan = SerialPlanner.plan(drawn);
            if (!plan.findings().isEmpty()) {
                continue;
            }
            List<Target> targets = plan.placements().keySet().stream()
                    .map(id -> new Target("", id, List.of(id), Optional.empty(), false))
                    .toList();
            var question = new ForecastQuestion(drawn, plan, Map.of(), targets, true);
            for (TargetForecast one : Forecaster.forecast(question, new Effort(1, Effort.ROUND, false))
                    .targets()) {
                LocalDate planned =
                        plan.of(one.target().milestone()).orElseThrow().finish().date();
                assertThat(one.nineteenInTwenty())
                        .as("branch %d, %s", seed, one.target().milestone())
                        .isEqualTo(one.evenChance())
                        .isBeforeOrEqualTo(planned);
                all++;
                alike += one.evenChance().equals(planned) ? 1 : 0;
            }
        }
        assertThat(all).isGreaterThan(1_000);
        assertThat((double) alike / all).isGreaterThan(0.9);
    }

    /** Against a table of slots that is looked through one by one. */
    @Test
    void aStretchIsFoundWhereATableOfSlotsHasIt() {
        Random random = new Random(5);
        for (int round = 0; round < 300; round++) {
            int slots = 130 + random.nextInt(70);
            boolean[][] table = new boolean[3][slots + 1];
            Holdings holdings = new Holdings(3, slots, 1);
            for (int work = 0; work < 25; work++) {
                Claim claim = new Claim(0, 0, 3, 1 + random.nextInt(3));
                int length = 1 + random.nextInt(work % 5 == 0 ? 80 : 9);
                int ready = random.nextInt(slots - 1);
                int expected = firstFit(table, claim.count(), ready, length);
                assertThat(firstFit(holdings, claim, ready, length, slots)).isEqualTo(expected);
                if (expected + length <= slots) {
                    holdings.hold(new Claim[] {claim}, 0, expected, expected + length - 1);
                    hold(table, claim.count(), expected, length);
                }
            }
        }
    }

    private static int firstFit(Holdings holdings, Claim claim, int ready, int length, int slots) {
        int from = ready;
        while (from + length <= slots) {
            int again = holdings.clash(new Claim[] {claim}, 0, from, from + length - 1);
            if (again == Holdings.FREE) {
                return from;
            }
            from = again;
        }
        return slots;
    }

    private static int firstFit(boolean[][] table, int count, int ready, int length) {
        int slots = table[0].length - 1;
        for (int from = ready; from + length <= slots; from++) {
            if (free(table, from, length).length >= count) {
                return from;
            }
        }
        return slots;
    }

    private static int[] free(boolean[][] table, int from, int length) {
        return IntStream.range(0, table.length)
                .filter(unit -> IntStream.range(from, from + length).noneMatch(slot -> table[unit][slot]))
                .toArray();
    }

    private static void hold(boolean[][] table, int count, int from, int length) {
        Arrays.stream(free(table, from, length))
                .limit(count)
                .forEach(unit -> Arrays.fill(table[unit], from, from + length, true));
    }
}
