package org.plumbrow.schedule.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.calc.duration.ActivityCode;
import org.plumbrow.database.Run;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.project.Stage;
import org.plumbrow.schedule.PlannedDates;
import org.plumbrow.schedule.PublishedPlan;
import org.plumbrow.schedule.ScheduleFixture;
import org.springframework.beans.factory.annotation.Autowired;

@PlumbrowTest
class PlanRunTest {

    @Autowired
    TestWorld world;

    @Autowired
    ProjectFixture projects;

    @Autowired
    ScheduleFixture schedule;

    @Autowired
    PublishedPlan published;

    @Test
    void theFirstPlanOfABranchPublishesItself() {
        TestBranch branch = world.branch();
        schedule.crew(branch, "Crew 1");
        UUID dairy = projects.aDairyGroundMount().in(branch).build();
        schedule.reach(branch, dairy, Stage.PERMITTED, LocalDate.of(2027, 2, 16));
        Run run = schedule.planned(branch);
        assertThat(run.state()).as(run.outcome()).isEqualTo(Run.State.DONE);
        List<PlannedDates> dates = world.as(branch.manager(), () -> published.of(dairy));
        assertThat(dates).extracting(PlannedDates::code).contains(ActivityCode.CUTOVER);
    }
}
