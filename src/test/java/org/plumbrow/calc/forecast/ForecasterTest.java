package org.plumbrow.calc.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.calendar.WorkingCalendar;
import org.plumbrow.calc.duration.Spread;
import org.plumbrow.calc.planning.Activity;
import org.plumbrow.calc.planning.Crew;
import org.plumbrow.calc.planning.Fix;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.Predecessor;
import org.plumbrow.calc.planning.Project;
import org.plumbrow.calc.planning.RandomBranch;
import org.plumbrow.calc.planning.SerialPlanner;
import org.plumbrow.calc.planning.WeatherAllowance;
import org.plumbrow.calc.planning.Work;

/** Every day works here unless a test says otherwise, so that a date is today plus days of work. */
class ForecasterTest {

    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final Effort MANY = new Effort(7, 20_000, false);

    private WeatherAllowance weather = WeatherAllowance.NONE;

    private PlanningProblem problem(Activity... activities) {
        return new PlanningProblem(
                WorkingCalendar.EVERY_DAY,
                HalfDay.morning(TODAY),
                TODAY.plusYears(2),
                List.of(new Project("p", "North barn"), new Project("q", "South barn")),
                List.of(activities),
                List.of(
                        new Crew("c", "Crew 1", Set.of("array"), List.of()),
                        new Crew("d", "Crew 2", Set.of(), List.of())),
                List.of(),
                List.of(),
                weather);
    }

    private static Activity work(String id, int halfDays) {
        return Activity.of(id, "p", id, new Work.ByCrew(Set.of("array"), Map.of("c", halfDays)));
    }

    private static Activity waiting(String id, int days) {
        return Activity.of(id, "p", id, new Work.Waiting(days, WorkingCalendar.EVERY_DAY, false));
    }

    private static TargetForecast forecast(
            PlanningProblem problem, Map<String, Uncertainty> uncertain, Optional<LocalDate> promised, String... ids) {
        var target = new Target("p", "system on", List.of(ids), promised, true);
        var question = new ForecastQuestion(problem, SerialPlanner.plan(problem), uncertain, List.of(target), false);
        return Forecaster.forecast(question, MANY).of(target).orElseThrow();
    }

    /** A wait of n days that begins today ends n days later, so its date's chance is the distribution's own. */
    @Test
    void aSingleWaitHasTheChancesOfItsDistribution() {
        var spread = new Uncertainty.OfWait(new Spread(5, 15, 45));
        for (int days : new int[] {8, 12, 18, 30}) {
            var said = forecast(
                    problem(waiting("permit", 15)),
                    Map.of("permit", spread),
                    Optional.of(TODAY.plusDays(days)),
                    "permit");
            assertThat(said.chanceKept().orElseThrow()).isCloseTo(spread.share(days + 0.5), within(0.005));
        }
    }

    /** Half-days are numbered in two bytes, which are full after 89 years: what is later counts as late, never as soon. */
    @Test
    void anAnswerExpectedInAHundredYearsIsNotSoon() {
        var expected = new Fix.Expected(HalfDay.morning(TODAY), HalfDay.afternoon(TODAY.plusYears(100)));
        var said = forecast(
                problem(waiting("permit", 15).fixed(expected)), Map.of(), Optional.of(TODAY.plusYears(80)), "permit");
        assertThat(said.chanceKept()).hasValue(0.0);
        assertThat(said.evenChance()).isAfter(TODAY.plusYears(80));
    }

    /** Two independent waits side by side: the later one is over by then with the product of their chances. */
    @Test
    void ofTwoThatAreBothNeededTheChancesMultiply() {
        var first = new Uncertainty.OfWait(new Spread(5, 15, 45));
        var second = new Uncertainty.OfWait(new Spread(2, 20, 30));
        var said = forecast(
                problem(waiting("permit", 15), waiting("agreement", 20)),
                Map.of("permit", first, "agreement", second),
                Optional.of(TODAY.plusDays(20)),
                "permit",
                "agreement");
        assertThat(said.chanceKept().orElseThrow()).isCloseTo(first.share(20.5) * second.share(20.5), within(0.01));
    }

    /** Twelve works in a row: means and variances add; P50 and P80 are those of the normal that the sum tends to. */
    @Test
    void aChainOfWorksAddsItsMeansAndVariances() {
        List<Activity> chain = new ArrayList<>();
        Map<String, Uncertainty> uncertain = new HashMap<>();
        var spread = new Spread(8, 10, 13);
        for (int i = 0; i < 12; i++) {
            Activity next = work("w" + i, 20);
            chain.add(i == 0 ? next : next.after(Predecessor.of("w" + (i - 1))));
            uncertain.put("w" + i, new Uncertainty.Measured(spread));
        }
        double[] moments = momentsOfHalfDays(new Uncertainty.Measured(spread));
        double mean = 12 * moments[0] / 2;
        double deviation = Math.sqrt(12 * moments[1]) / 2;
        var said = forecast(problem(chain.toArray(Activity[]::new)), uncertain, Optional.empty(), "w11");
        assertThat(daysOfWork(said.evenChance())).isCloseTo(mean, within(1.5));
        assertThat(daysOfWork(said.fourInFive()) - daysOfWork(said.evenChance()))
                .isCloseTo(0.8416 * deviation, within(1.5));
        assertThat(daysOfWork(said.nineteenInTwenty()) - daysOfWork(said.evenChance()))
                .isCloseTo(1.6449 * deviation, within(2.5));
    }

    private static double daysOfWork(LocalDate finish) {
        return finish.toEpochDay() - TODAY.toEpochDay() + 1;
    }

    private static double[] momentsOfHalfDays(Uncertainty work) {
        double mean = 0;
        double square = 0;
        for (int halfDays = 1; halfDays < 200; halfDays++) {
            double share = work.share((halfDays + 0.5) / 2) - (halfDays == 1 ? 0 : work.share((halfDays - 0.5) / 2));
            mean += share * halfDays;
            square += share * halfDays * halfDays;
        }
        return new double[] {mean, square - mean * mean};
    }

    /** The crew does one after the other though neither waits for the other's project. */
    @Test
    void theCrewsNextWorkWaitsForItsLast() {
        var said = forecast(
                problem(work("racking", 10), work("modules", 10)),
                Map.of(
                        "racking", new Uncertainty.Measured(new Spread(4, 5, 40)),
                        "modules", new Uncertainty.Measured(new Spread(5, 5, 5))),
                Optional.of(TODAY.plusDays(9)),
                "modules");
        assertThat(said.evenChance()).isBetween(TODAY.plusDays(9), TODAY.plusDays(10));
        assertThat(said.nineteenInTwenty()).isAfter(TODAY.plusDays(40));
        assertThat(said.drivers()).extracting(Driver::activityId).containsExactly("modules", "racking");
        assertThat(said.drivers()).extracting(Driver::share).containsOnly(1.0);
    }

    /** Work of n half-days, each lost with chance p, takes n/(1-p) half-days in the mean, in whatever spells. */
    @Test
    void badWeatherTakesItsShare() {
        weather = new WeatherAllowance(
                Arrays.stream(Month.values()).collect(Collectors.toMap(month -> month, month -> 0.25)));
        Activity posts = work("posts", 120).outdoors();
        var said = forecast(problem(posts), Map.of(), Optional.empty(), "posts");
        assertThat(daysOfWork(said.evenChance())).isCloseTo(120 / 0.75 / 2, within(1.5));
        assertThat(said.nineteenInTwenty()).isAfter(said.fourInFive());
        assertThat(daysOfWork(forecast(problem(work("wiring", 120)), Map.of(), Optional.empty(), "wiring")
                        .nineteenInTwenty()))
                .isEqualTo(60);
    }

    /** A wait that has lasted nine full days of at least five can only last longer: P(≤ 20 | > 9) = (F(20) - F(9)) / (1 - F(9)); today itself may still bring it. */
    @Test
    void aWaitUnderWayRemembersHowLongItHasLasted() {
        var spread = new Uncertainty.OfWait(new Spread(5, 15, 45));
        Activity begun =
                waiting("permit", 15).fixed(new Fix.Begun(HalfDay.morning(TODAY.minusDays(10)), Optional.empty(), 1));
        var said = forecast(problem(begun), Map.of("permit", spread), Optional.of(TODAY.plusDays(10)), "permit");
        double over = spread.share(9.5);
        assertThat(said.chanceKept().orElseThrow()).isCloseTo((spread.share(20.5) - over) / (1 - over), within(0.01));
        assertThat(said.evenChance()).isAfterOrEqualTo(TODAY);
    }

    @Test
    void whatDrivesADateIsWhatIsLongerInTheRunsThatBreakIt() {
        var said = forecast(
                problem(
                        waiting("permit", 20),
                        waiting("modules", 19),
                        work("racking", 2).after(Predecessor.of("permit"), Predecessor.of("modules"))),
                Map.of(
                        "permit", new Uncertainty.OfWait(new Spread(18, 20, 22)),
                        "modules", new Uncertainty.OfWait(new Spread(5, 19, 90))),
                Optional.of(TODAY.plusDays(30)),
                "racking");
        assertThat(said.drivers().get(0)).isEqualTo(new Driver("racking", 1));
        assertThat(said.drivers().get(1)).isEqualTo(new Driver("modules", 1));
        assertThat(said.drivers()).extracting(Driver::activityId).doesNotContain("permit");
    }

    /**
     * Wiring is not let in before day 30, so only runs with racking later than that are followed beyond it. In those the
     * modules are behind the permit, which takes 18 days in each run: the permit holds up none of them.
     */
    @Test
    void eachRunIsFollowedThroughWhatHeldItUpItself() {
        var modules = new Uncertainty.OfWait(new Spread(5, 19, 90));
        var said = forecast(
                problem(
                        waiting("permit", 18),
                        waiting("modules", 19),
                        work("racking", 2).after(Predecessor.of("permit"), Predecessor.of("modules")),
                        work("wiring", 2)
                                .after(Predecessor.of("racking"))
                                .notBefore(HalfDay.morning(TODAY.plusDays(30)))),
                Map.of("modules", modules),
                Optional.empty(),
                "wiring");
        Map<String, Double> share =
                said.drivers().stream().collect(Collectors.toMap(Driver::activityId, Driver::share));
        assertThat(share).containsOnlyKeys("wiring", "racking", "modules").containsEntry("wiring", 1.0);
        assertThat(share.get("racking"))
                .isEqualTo(share.get("modules"))
                .isCloseTo(1 - modules.share(28.5), within(0.05));
    }

    /** Nothing uncertain: every run is the plan; more than a thousand activities of odd branches, settled ones too. */
    @Test
    void aCertainPlanIsForecastAsItStands() {
        int all = 0;
        int alike = 0;
        for (long seed = 0; seed < 800; seed++) {
            PlanningProblem drawn = fair(RandomBranch.of(seed, seed % 2 == 0));
            Plan plan = SerialPlanner.plan(drawn);
            if (!plan.findings().isEmpty()) {
                continue;
            }
            List<Target> targets = plan.placements().keySet().stream()
                    .map(id -> new Target("", id, List.of(id), Optional.empty(), true))
                    .toList();
            Forecast said = Forecaster.forecast(
                    new ForecastQuestion(drawn, plan, Map.of(), targets, false), new Effort(1, Effort.ROUND, false));
            for (TargetForecast one : said.targets()) {
                var placement = plan.of(one.target().milestone()).orElseThrow();
                assertThat(one.nineteenInTwenty())
                        .as("branch %d, %s", seed, placement)
                        .isEqualTo(one.evenChance())
                        .isBeforeOrEqualTo(placement.finish().date());
                all++;
                alike += one.evenChance().equals(placement.finish().date()) ? 1 : 0;
            }
        }
        // The others are earlier: a run does not wait for a piece of equipment that was lent out.
        assertThat(all).isGreaterThan(1_000);
        assertThat((double) alike / all).isGreaterThan(0.95);
    }

    static PlanningProblem fair(PlanningProblem drawn) {
        return new PlanningProblem(
                drawn.calendar(),
                drawn.today(),
                drawn.lastDay(),
                drawn.projects(),
                drawn.activities(),
                drawn.crews(),
                drawn.equipment(),
                drawn.promises(),
                WeatherAllowance.NONE);
    }

    @Test
    void theSameSeedSaysTheSameOnOneThreadAsOnFour() throws Exception {
        Activity[] chain = {work("a", 10), work("b", 6).after(Predecessor.of("a")), waiting("c", 9)};
        Map<String, Uncertainty> uncertain = Map.of(
                "a", new Uncertainty.Measured(new Spread(3, 5, 9)), "c", new Uncertainty.OfWait(new Spread(2, 9, 30)));
        PlanningProblem problem = problem(chain);
        var question = new ForecastQuestion(
                problem,
                SerialPlanner.plan(problem),
                uncertain,
                List.of(new Target("p", "done", List.of("b", "c"), Optional.of(TODAY.plusDays(9)), true)),
                false);
        Forecast onOne = new ForkJoinPool(1)
                .submit(() -> Forecaster.forecast(question, Effort.USUAL))
                .get();
        Forecast onFour = new ForkJoinPool(4)
                .submit(() -> Forecaster.forecast(question, Effort.USUAL))
                .get();
        assertThat(onOne).isEqualTo(onFour);
        assertThat(Forecaster.forecast(question, new Effort(2, 10_000, false))).isNotEqualTo(onOne);
    }

    /** A what-if that changes one project leaves the draws of all others as they were. */
    @Test
    void whatIsNotTouchedIsDrawnAlike() {
        Uncertainty spread = new Uncertainty.OfWait(new Spread(2, 9, 30));
        var alone = forecast(problem(waiting("c", 9)), Map.of("c", spread), Optional.of(TODAY.plusDays(9)), "c");
        var beside = forecast(
                problem(work("a", 10), waiting("c", 9)),
                Map.of("a", new Uncertainty.Measured(new Spread(3, 5, 9)), "c", spread),
                Optional.of(TODAY.plusDays(9)),
                "c");
        assertThat(beside.chanceKept()).isEqualTo(alone.chanceKept());
    }

    @Test
    void itStopsWhenTheFiguresStandStill() {
        PlanningProblem problem = problem(waiting("c", 9));
        var question = new ForecastQuestion(
                problem,
                SerialPlanner.plan(problem),
                Map.of("c", new Uncertainty.OfWait(new Spread(8, 9, 10))),
                List.of(new Target("p", "done", List.of("c"), Optional.of(TODAY.plusDays(20)), true)),
                false);
        assertThat(Forecaster.forecast(question, Effort.USUAL).runs()).isEqualTo(Effort.ROUND);
        assertThat(Forecaster.forecast(question, new Effort(1, 5_000, false)).runs())
                .isEqualTo(5_000);
    }
}
