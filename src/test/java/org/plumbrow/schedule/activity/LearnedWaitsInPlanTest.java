package org.plumbrow.schedule.activity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.permit.Awaited;
import org.plumbrow.permit.AwaitedBook;
import org.plumbrow.permit.AwaitedKind;
import org.plumbrow.permit.OwedBy;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.project.Projects;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.transaction.support.TransactionTemplate;

/** What past answers have taught about somebody is what the plan waits for them. */
@PlumbrowTest
class LearnedWaitsInPlanTest {

    private static final LocalDate SENT = LocalDate.of(2026, 9, 1);

    @Autowired
    TestWorld world;

    @Autowired
    ProjectFixture projects;

    @Autowired
    Projects facts;

    @Autowired
    BranchSettings settings;

    @Autowired
    ActivityList activities;

    @Autowired
    AwaitedBook book;

    @Autowired
    TransactionTemplate transaction;

    private TestBranch branch;

    @BeforeEach
    void aBranch() {
        branch = world.branch();
    }

    private UUID dairy(String name) {
        return projects.aDairyGroundMount().in(branch).named(name).build();
    }

    private void gear(UUID project, String supplier, @Nullable LocalDate came) {
        Awaited one = new Awaited(
                UUID.randomUUID(),
                -1,
                project,
                AwaitedKind.GEAR_DELIVERY,
                "",
                "",
                OwedBy.SUPPLIER,
                null,
                null,
                supplier,
                SENT,
                null,
                null,
                null,
                came,
                null,
                null,
                "");
        world.as(branch.projectManager(), () -> assertThat(book.add(one)).isEmpty());
    }

    private JobActivities.Item plannedGear(UUID project) {
        return world
                .as(
                        branch.projectManager(),
                        () -> transaction.execute(status ->
                                activities.refresh(List.of(facts.facts(project)), settings.forPlanning(branch.id()))))
                .get(0)
                .items()
                .stream()
                .filter(item -> item.row().key().equals("gear-delivery"))
                .findFirst()
                .orElseThrow();
    }

    /**
     * The table says 5, 21 and 90 calendar days: as a log-normal m0 = ln 26.795. Five answers of 40 days weigh as much, so
     * the middle is exp((ln 26.795 + ln 40) / 2) = 32.74 days.
     */
    @Test
    void whoAlwaysTakesFortyDaysIsWaitedForSoLong() {
        for (int past = 0; past < 5; past++) {
            gear(dairy("Past " + past), "Alder Supply", SENT.plusDays(40));
        }
        UUID asked = dairy("Asked of the same");
        gear(asked, "Alder supply", null);
        UUID elsewhere = dairy("Asked of another");
        gear(elsewhere, "Birch Gear", null);
        assertThat(plannedGear(asked).row().days().typical()).isCloseTo(32.74, within(0.01));
        assertThat(plannedGear(asked).derived().isMeasuredWait()).isTrue();
        assertThat(plannedGear(elsewhere).row().days().typical()).isEqualTo(21);
    }
}
