package org.plumbrow.calc.duration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;
import static org.plumbrow.calc.duration.ActivityCode.AC_GEAR;
import static org.plumbrow.calc.duration.ActivityCode.COMMISSIONING;
import static org.plumbrow.calc.duration.ActivityCode.CONDUCTORS;
import static org.plumbrow.calc.duration.ActivityCode.CUTOVER;
import static org.plumbrow.calc.duration.ActivityCode.HAND_OVER;
import static org.plumbrow.calc.duration.ActivityCode.LOCATE;
import static org.plumbrow.calc.duration.ActivityCode.MODULES;
import static org.plumbrow.calc.duration.ActivityCode.RACKING;
import static org.plumbrow.calc.duration.ActivityCode.SITE_FINISH;
import static org.plumbrow.calc.duration.ActivityCode.SITE_START;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.plumbrow.calc.Range;

class ProjectActivitiesTest {

    private static final DurationTables TABLES = ShippedTable.all();

    /** The worked whole job: 99 kW on posts, 180 modules, 10 strings, 2 inverters, 300 ft trench, 60 ft bore. */
    private static final ProjectWork FARM = ProjectWork.of(
                    false,
                    ArrayWork.of(Mounting.GROUND, 99)
                            .with(QuantityKind.MODULES, 180)
                            .with(QuantityKind.POSTS, 60)
                            .with(QuantityKind.STRINGS, 10))
            .with(QuantityKind.INVERTERS, 2)
            .with(QuantityKind.TRENCH_FT, 300)
            .with(QuantityKind.BORE_FT, 60)
            .with(QuantityKind.CONDUCTOR_RUN_FT, 300)
            .with(QuantityKind.TERMINATIONS, 80)
            .with(QuantityKind.RESEED_ACRES, 0.5);

    /** The worked home: 23 modules of 400 W, 9.2 kW, nothing else counted. */
    private static final ProjectWork HOME = ProjectWork.of(true, ArrayWork.of(Mounting.PITCHED_ROOF, 9.2));

    private static List<ProjectActivity> activities(ProjectWork work) {
        return ProjectActivities.of(work, TABLES);
    }

    private static ProjectActivity find(ProjectWork work, String key) {
        return activities(work).stream()
                .filter(activity -> activity.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    private static List<ProjectActivity> field(ProjectWork work) {
        return activities(work).stream()
                .filter(activity -> activity.kind() == ActivityCode.Kind.CREW)
                .filter(activity -> activity.code().compareTo(SITE_FINISH) <= 0)
                .toList();
    }

    private static double fieldDays(ProjectWork work, int people) {
        return field(work).stream()
                        .mapToInt(activity -> activity.daysFor(people).halfDaysTypical())
                        .sum()
                / 2.0;
    }

    /** Common practice, no source: 2 to 3 weeks of field work with one crew of five. */
    @Test
    void aboutNinetyNineKilowattsOnTheGroundTakeOneCrewTwoToThreeWeeks() {
        assertThat(fieldDays(FARM, 5)).isBetween(10.0, 15.0);
        assertThat(fieldDays(ProjectWork.of(false, ArrayWork.of(Mounting.GROUND, 99)), 5))
                .isBetween(10.0, 15.0);
        assertThat(fieldDays(FARM, 4)).isBetween(10.0, 15.0);
    }

    /** Row by row in series the worked example comes to 15.6 crew-days before demobilising. */
    @Test
    void rowByRowTheFarmComesToThePublishedSum() {
        double sum = field(FARM).stream()
                .mapToDouble(activity -> activity.days().typical())
                .sum();
        double demobilising = TABLES.fixedTime("demobilise").days().typical();
        assertThat(sum - demobilising).isCloseTo(15.6, within(0.1));
    }

    /** Common practice, no source: about 3 days on site for one crew of four. */
    @Test
    void aHomeTakesAboutThreeDays() {
        assertThat(fieldDays(HOME, 4)).isBetween(2.5, 3.5);
        assertThat(fieldDays(HOME.with(InverterKind.MICROINVERTERS), 4)).isBetween(2.5, 3.5);
    }

    /** Common practice, no source: 50 kW on a flat roof 5 to 8 days. */
    @Test
    void fiftyKilowattsOnAFlatRoofTakeFiveToEightDays() {
        assertThat(fieldDays(ProjectWork.of(false, ArrayWork.of(Mounting.FLAT_ROOF, 50)), 4))
                .isBetween(5.0, 8.0);
    }

    @Test
    void theLowRateGivesTheLongDuration() {
        Spread posts = find(FARM, "foundation").days();
        assertThat(posts.high()).isEqualTo(60 / 25.0);
        assertThat(posts.typical()).isEqualTo(60 / 45.0);
        assertThat(posts.low()).isEqualTo(60 / 80.0);
        assertThat(find(FARM, "bore").days()).isEqualTo(new Spread(0.5 + 60 / 200.0, 0.5 + 60 / 80.0, 0.5 + 60 / 40.0));
    }

    @Test
    void moreHandsAreFasterUnlessAMachineSetsThePaceOrTheyStandInEachOthersWay() {
        ProjectActivity racking = find(FARM, "racking");
        assertThat(racking.daysFor(4).typical()).isCloseTo(1.8, within(1e-9));
        assertThat(racking.daysFor(5).typical()).isCloseTo(1.44, within(1e-9));
        assertThat(racking.daysFor(2).typical()).isCloseTo(3.6, within(1e-9));
        assertThat(racking.daysFor(12)).isEqualTo(racking.daysFor(8));
        ProjectActivity posts = find(FARM, "foundation");
        assertThat(posts.daysFor(6)).isEqualTo(posts.daysFor(3)).isEqualTo(posts.days());
        assertThat(posts.daysFor(2).typical()).isCloseTo(60 / 45.0 * 3 / 2, within(1e-9));
    }

    @Test
    void theServiceSideDoesNotWaitForTheArray() {
        assertThat(allBefore(FARM, CUTOVER)).doesNotContain(RACKING.key(), MODULES.key(), "dc-wiring", "inverters");
        assertThat(allBefore(FARM, CUTOVER)).contains(AC_GEAR.key(), CONDUCTORS.key(), "service-inspection", "trench");
        assertThat(allBefore(FARM, COMMISSIONING)).contains(MODULES.key(), "inspection", "permission", CUTOVER.key());
    }

    @Test
    void nobodyDigsOrDrivesPostsBeforeTheLocateNorBuildsBeforeThePermit() {
        for (String key : List.of("foundation", "trench", "bore")) {
            assertThat(allBefore(FARM, key)).contains(LOCATE.key(), "permit", "agreement", SITE_START.key());
        }
        assertThat(allBefore(HOME, MODULES)).contains("permit", "agreement").doesNotContain(LOCATE.key());
        assertThat(find(FARM, "locate").justInTime()).isTrue();
    }

    private static Set<String> allBefore(ProjectWork work, ActivityCode code) {
        return allBefore(work, code.key());
    }

    private static Set<String> allBefore(ProjectWork work, String key) {
        Map<String, ProjectActivity> byKey = new HashMap<>();
        activities(work).forEach(activity -> byKey.put(activity.key(), activity));
        Set<String> before = new HashSet<>();
        collect(byKey, key, before);
        return before;
    }

    private static void collect(Map<String, ProjectActivity> byKey, String key, Set<String> before) {
        for (Follows first : byKey.get(key).predecessors()) {
            if (before.add(first.key())) {
                collect(byKey, first.key(), before);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Mounting.class)
    void everyActivityLeadsToTheHandOverAndNoneBeforeItself(Mounting mounting) {
        for (boolean home : new boolean[] {true, false}) {
            for (InverterKind kind : InverterKind.values()) {
                ProjectWork work = ProjectWork.of(home, ArrayWork.of(mounting, home ? 9 : 90))
                        .with(kind);
                List<ProjectActivity> all = activities(work);
                Set<String> before = allBefore(work, HAND_OVER);
                assertThat(all).extracting(ProjectActivity::key).doesNotHaveDuplicates();
                assertThat(all)
                        .filteredOn(activity -> activity.code() != HAND_OVER)
                        .extracting(ProjectActivity::key)
                        .containsExactlyInAnyOrderElementsOf(before);
                assertThat(all)
                        .noneMatch(activity -> allBefore(work, activity.key()).contains(activity.key()));
                assertThat(all)
                        .filteredOn(activity -> activity.kind() == ActivityCode.Kind.CREW)
                        .noneMatch(activity -> activity.skills().isEmpty());
            }
        }
    }

    @Test
    void arraysOfDifferentMountingEachHaveTheirOwnWorkAndCrewAndTheFirstKeepsItsKey() {
        ArrayWork ground = ArrayWork.of(Mounting.GROUND, 60);
        ProjectWork both = ProjectWork.of(false, ground, ArrayWork.of(Mounting.FLAT_ROOF, 40));
        assertThat(activities(both))
                .extracting(ProjectActivity::key)
                .contains("foundation", "racking", "modules", "dc-wiring", "racking-2", "modules-2", "dc-wiring-2")
                .doesNotContain("foundation-2");
        assertThat(find(both, "racking-2").words()).isEqualTo("ballast and rails, array 2 (flat roof)");
        assertThat(find(both, "racking-2").continuityGroup()).hasValue("array-2");
        assertThat(find(both, "modules-2").skills()).contains(Skill.ROOF);
        assertThat(find(both, "electrical-finish").predecessors())
                .contains(new Follows("dc-wiring", 0), new Follows("dc-wiring-2", 0));
        assertThat(find(ProjectWork.of(false, ground), "racking").key()).isEqualTo("racking");
    }

    @Test
    void oneCrewDoesRackingAndModulesAndOneDoesInvertersAndGear() {
        assertThat(find(FARM, "racking").continuityGroup())
                .isEqualTo(find(FARM, "modules").continuityGroup());
        assertThat(find(FARM, "inverters").continuityGroup())
                .isEqualTo(find(FARM, "ac-gear").continuityGroup());
        assertThat(find(FARM, "racking").continuityGroup()).isPresent();
        assertThat(find(FARM, "ac-gear").continuityGroup()).isPresent();
    }

    @Test
    void concreteCuresBeforeTheRacking() {
        ProjectWork piers =
                ProjectWork.of(false, new ArrayWork(Mounting.GROUND, Foundation.CONCRETE_PIERS, 99, Map.of()));
        assertThat(find(piers, "racking").predecessors()).contains(new Follows("foundation", 5));
        assertThat(find(piers, "foundation").days().typical()).isEqualTo(60 / 30.0);
    }

    @Test
    void whatNobodyCountedIsEstimatedByANamedRuleAndWhatIsCountedWins() {
        ArrayWork array = ArrayWork.of(Mounting.GROUND, 99);
        Quantities estimated = new Quantities(ProjectWork.of(false, array));
        assertThat(estimated.posts(array))
                .isEqualTo(new Quantity(
                        QuantityKind.POSTS, 60, true, "one post for every 3 modules (common practice, no source)"));
        ArrayWork counted = array.with(QuantityKind.POSTS, 72);
        assertThat(new Quantities(ProjectWork.of(false, counted)).posts(counted))
                .isEqualTo(new Quantity(QuantityKind.POSTS, 72, false, "given"));
    }

    @Test
    void everyNumberOpensToInputsStepsAndSource() {
        Explanation opened = find(FARM, "foundation").explanationFor(2);
        assertThat(opened.inputs())
                .containsExactly(
                        new Explanation.Input("posts, screws or piers", 60, "posts", false, "given"),
                        new Explanation.Input(
                                "rate of driven posts with one tracked driver",
                                45,
                                "posts a day",
                                false,
                                "this branch's table, 25 to 80, crew of 3"));
        assertThat(opened.steps())
                .containsExactly(
                        "driven posts with one tracked driver: 60 posts ÷ 45 a day = 1.33 (0.75 to 2.4) crew-days",
                        "with 2 people instead of 3: 2 (1.12 to 3.6) crew-days",
                        "driven posts: 2 (1.12 to 3.6) days, planned as 2");
        assertThat(opened.sources())
                .containsExactly("driven posts with one tracked driver: common practice, no source");
        assertThat(opened.isEstimate()).isFalse();
        assertThat(find(HOME, "modules").explanation().isEstimate()).isTrue();
        assertThat(find(FARM, "permit").explanation().steps())
                .containsExactly(
                        "building or electrical permit with plan review: 15 (5 to 45) working days",
                        "permit: 15 (5 to 45) working days");
    }

    @Test
    void waitsAreChosenBySizeAndCanBeChosenOtherwise() {
        assertThat(find(HOME, "interconnection").days()).isEqualTo(new Spread(15, 25, 45));
        assertThat(find(FARM, "interconnection").days()).isEqualTo(new Spread(10, 25, 90));
        ProjectWork large = FARM.with(new WaitChoices(
                WaitChoices.Permit.PLAN_REVIEW, true, WaitChoices.Interconnection.STUDY, true, true, true));
        assertThat(find(large, "interconnection").dayKind()).isEqualTo(WaitTime.DayKind.CALENDAR);
        assertThat(find(large, "gear-delivery").days().typical()).isEqualTo(240);
        assertThat(find(large, "zoning").days().typical()).isEqualTo(60);
        assertThat(allBefore(large, SITE_START)).contains("zoning", "structural-letter", "ground-test");
    }

    @Test
    void aMilestoneNamesTheActivitiesThatMustBeFinished() {
        assertThat(Milestone.ARRAY_BUILT.keysIn(activities(FARM))).containsExactly("racking", "modules");
        assertThat(Milestone.SYSTEM_ON.keysIn(activities(HOME))).containsExactly("commissioning");
        for (Milestone milestone : Milestone.values()) {
            assertThat(milestone.keysIn(activities(HOME))).as(milestone.words()).isNotEmpty();
            assertThat(milestone.keysIn(activities(FARM))).as(milestone.words()).isNotEmpty();
        }
    }

    @Test
    void aBranchsOwnRateChangesTheDuration() {
        List<WorkRate> own = ShippedTable.rates().stream()
                .map(rate -> rate.code().equals("racking")
                        ? PaceLearning.of(rate, List.of(new DoneWork(1_000, 5))).rate()
                        : rate)
                .toList();
        DurationTables tables = new DurationTables(own, ShippedTable.fixedTimes(), ShippedTable.waits());
        ProjectActivity racking = ProjectActivities.of(FARM, tables).stream()
                .filter(activity -> activity.code() == RACKING)
                .findFirst()
                .orElseThrow();
        assertThat(racking.days().typical()).isCloseTo(180 / 150.0, within(1e-9));
    }

    @Test
    void anAmountOutsideItsLimitsIsRefusedByName() {
        assertThatExceptionOfType(Range.OutOfRange.class)
                .isThrownBy(() -> FARM.with(QuantityKind.TRENCH_FT, -1))
                .withMessage("trench in soil: -1.0 is outside 0.0 to 50000.0 ft");
    }

    @Test
    void inverterCountTellsTheKind() {
        assertThat(InverterKind.from(16, 16)).isEqualTo(InverterKind.MICROINVERTERS);
        assertThat(InverterKind.from(2, 180)).isEqualTo(InverterKind.STRING_INVERTERS);
        assertThat(InverterKind.from(1, 2)).isEqualTo(InverterKind.STRING_INVERTERS);
    }
}
