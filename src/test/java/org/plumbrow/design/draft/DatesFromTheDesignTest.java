package org.plumbrow.design.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.Queries;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.calc.duration.ActivityCode;
import org.plumbrow.calc.duration.EquipmentKind;
import org.plumbrow.design.DrawnQuantities;
import org.plumbrow.design.part.Cells;
import org.plumbrow.design.part.Part;
import org.plumbrow.estimate.DesignedSystem;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.project.Projects;
import org.plumbrow.project.Stage;
import org.plumbrow.schedule.ScheduleFixture;
import org.plumbrow.schedule.activity.ActivityList;
import org.plumbrow.schedule.plan.PlanHead;
import org.plumbrow.schedule.plan.Plans;
import org.springframework.beans.factory.annotation.Autowired;

@PlumbrowTest
class DatesFromTheDesignTest {

    @Autowired
    TestWorld world;

    @Autowired
    ProjectFixture projects;

    @Autowired
    ScheduleFixture schedule;

    @Autowired
    DesignEditing editing;

    @Autowired
    Designs designs;

    @Autowired
    Revisions revisions;

    @Autowired
    Plans plans;

    @Autowired
    ActivityList activities;

    @Autowired
    Projects register;

    @Autowired
    BranchSettings settings;

    @Autowired
    DesignedSystem drawnSystem;

    TestBranch branch;
    UUID dairy;

    @BeforeEach
    void aPermittedDairy() {
        branch = world.branch();
        schedule.crew(branch, "Crew 1");
        schedule.machine(branch, "Driver 1", EquipmentKind.POST_DRIVER);
        schedule.machine(branch, "Trencher 1", EquipmentKind.TRENCHER);
        dairy = projects.aDairyGroundMount().in(branch).build();
        schedule.reach(branch, dairy, Stage.PERMITTED, LocalDate.of(2027, 2, 16));
    }

    @Test
    void morePostsInAFrozenDesignMoveTheDates() {
        freeze(112);
        schedule.planned(branch);
        LocalDate before = finish(() -> plans.publishedHead(branch.id()));
        double days = days();
        freeze(448);
        schedule.planned(branch);
        assertThat(days()).isGreaterThan(2.5 * days);
        assertThat(finish(() -> plans.draftHead(branch.id())))
                .isAfterOrEqualTo(before.plusDays((long) (days() - days)));
    }

    @Test
    void aDraftMovesNothing() {
        double days = days();
        draw(448);
        assertThat(days()).isEqualTo(days);
    }

    @Test
    void postsAreSharedByTheModulesOfTheArraysOnTheGroundAndBuriedWaysCountOnce() {
        world.as(branch.designer(), () -> {
            editing.begin(dairy, null, Map.of());
            keep(Part.ARRAYS, List.of(array("A1", "18, 18"), array("A2", "18")));
            keep(Part.RACKING, List.of(Cells.of("posts", 100)));
            keep(Part.RUNS, List.of(run("R1", 120, ""), run("R2", 90, ""), run("R3", 40, "driveway")));
            return revisions.freeze(dairy, designs.draft(dairy).facts().version(), "");
        });
        DrawnQuantities drawn = world.as(branch.designer(), () -> designs.quantitiesUnchecked(List.of(dairy)))
                .get(dairy);
        assertThat(drawn.revision()).isEqualTo("A");
        assertThat(drawn.arrays()).extracting(DrawnQuantities.OfArray::posts).containsExactly(67, 33);
        assertThat(drawn.arrays()).extracting(DrawnQuantities.OfArray::modules).containsExactly(72, 36);
        assertThat(drawn.trenchFt()).isEqualTo(120);
        assertThat(drawn.boreFt()).isEqualTo(40);
    }

    @Test
    void quantitiesOfAllProjectsAreOneQuery() {
        freeze(112);
        UUID other = projects.aPoultryGroundMount().in(branch).build();
        int one = world.as(branch.manager(), () -> Queries.count(() -> designs.quantitiesUnchecked(List.of(dairy))));
        int two = world.as(
                branch.manager(), () -> Queries.count(() -> designs.quantitiesUnchecked(List.of(dairy, other))));
        assertThat(two).isEqualTo(one).isEqualTo(1);
    }

    @Test
    void theEstimateReadsTheFrozenRevisionAndBeforeItTheDraft() {
        assertThat(drawn()).isEmpty();
        draw(112);
        assertThat(drawn().orElseThrow().source()).isEqualTo("the draft of the design");
        freeze(112);
        DesignedSystem.Designed frozen = drawn().orElseThrow();
        assertThat(frozen.source()).isEqualTo("design revision A");
        assertThat(frozen.groups()).hasSize(1);
        DesignedSystem.Group group = frozen.groups().get(0);
        assertThat(group.kwAc()).isEqualTo(75);
        DesignedSystem.Array array = group.arrays().get(0);
        assertThat(array.kwDc()).isCloseTo(99, within(1e-9));
        assertThat(array.rowWidthM()).as("two modules of 2.278 m up the slope").isCloseTo(4.556, within(0.02));
        assertThat(array.rowPitchM()).isCloseTo(9.144, within(1e-9));
        assertThat(array.gammaPerK()).isBetween(-0.0045, -0.0025);
    }

    private Optional<DesignedSystem.Designed> drawn() {
        return world.as(branch.manager(), () -> drawnSystem.of(dairy));
    }

    private LocalDate finish(Supplier<Optional<PlanHead>> plan) {
        return schedule
                .inBranch(branch, () -> {
                    PlanHead head = plan.get().orElseThrow();
                    return plans.rows(List.of(head), dairy).get(head.id());
                })
                .stream()
                .filter(row -> row.code() == ActivityCode.FOUNDATION)
                .findFirst()
                .orElseThrow()
                .finish()
                .date();
    }

    private double days() {
        return schedule
                .inBranch(
                        branch,
                        () -> activities.refresh(
                                List.of(register.factsUnchecked(dairy)), settings.forPlanning(branch.id())))
                .get(0)
                .derived()
                .stream()
                .filter(activity -> activity.code() == ActivityCode.FOUNDATION)
                .mapToDouble(activity -> activity.days().typical())
                .sum();
    }

    private void freeze(int posts) {
        draw(posts);
        assertThat(world.as(
                        branch.designer(),
                        () -> revisions.freeze(
                                dairy, designs.draft(dairy).facts().version(), "posts " + posts)))
                .isEmpty();
    }

    private void draw(int posts) {
        world.as(branch.designer(), () -> {
            editing.begin(dairy, null, Map.of());
            keep(Part.ARRAYS, List.of(array("A1", "18, 18, 18, 18, 18")));
            keep(Part.INVERTERS, List.of(inverter(1), inverter(2), inverter(3)));
            keep(Part.RACKING, List.of(Cells.of("posts", posts)));
            return dairy;
        });
    }

    private void keep(Part part, List<Cells> rows) {
        assertThat(editing.keep(dairy, part, designs.draft(dairy).kept(part).version(), rows))
                .isEmpty();
    }

    private static Cells array(String mark, String wide) {
        return Cells.of(
                "mark",
                mark,
                "mounting",
                "GROUND",
                "onDwelling",
                "no",
                "tiltDeg",
                30,
                "azimuthDeg",
                180,
                "module",
                "Module 550 W",
                "portrait",
                "yes",
                "modulesHigh",
                2,
                "modulesWide",
                wide,
                "rowPitchFt",
                30);
    }

    private static Cells inverter(int number) {
        return Cells.of("mark", "INV " + number, "type", "Inverter 25 kW, 480 V", "array", "A1");
    }

    private static Cells run(String mark, int feet, String under) {
        return Cells.of(
                "mark",
                mark,
                "flow",
                "AC",
                "from",
                "AC panel",
                "to",
                "driveway".equals(under) ? "D1" : "POI",
                "lengthFt",
                feet,
                "size",
                "250",
                "material",
                "COPPER",
                "insulation",
                "THWN_2",
                "conductors",
                3,
                "raceway",
                "PVC_40",
                "coverIn",
                24,
                "under",
                "driveway".equals(under) ? "UNDER_STREETS_AND_DRIVEWAYS" : "ELSEWHERE",
                "terminalC",
                75);
    }
}
