package org.plumbrow.schedule.lookahead;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.Queries;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.calc.duration.EquipmentKind;
import org.plumbrow.calc.duration.Milestone;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.project.Stage;
import org.plumbrow.schedule.ScheduleFixture;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

@PlumbrowTest
class LookAheadPageTest {

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    ProjectFixture projects;

    @Autowired
    ScheduleFixture schedule;

    TestBranch branch;

    @BeforeEach
    void aBranch() {
        branch = world.branch();
    }

    @Test
    void withoutAPlanThePageSaysWhatWillStandThere() {
        assertThat(page("/look-ahead"))
                .hasStatusOk()
                .bodyText()
                .contains("Look-ahead: no plan yet")
                .contains("Add a crew");
    }

    @Test
    void theHeadingIsTheAnswer() {
        UUID hopeless = aPlannedProject("Hatch Ridge", LocalDate.of(2027, 3, 12));
        assertThat(page("/look-ahead"))
                .hasStatusOk()
                .bodyText()
                .contains("<h1>Look-ahead: one promise breaks</h1>")
                .contains("Hatch Ridge breaks its promise by")
                .contains("No plan can keep it: with every crew free for it")
                .contains("No plan is less late: that is proved.")
                .contains("/projects/" + hopeless + "/schedule");
    }

    @Test
    void theNumberOfQueriesDoesNotGrowWithTheProjects() {
        aPlannedProject("First", LocalDate.of(2027, 6, 30));
        int withOne = Queries.count(() -> page("/look-ahead"));
        for (int more = 0; more < 4; more++) {
            aProject("More " + more, LocalDate.of(2027, 7, 30));
        }
        schedule.planned(branch);
        int withFive = Queries.count(() -> page("/look-ahead?plan=draft"));
        // a draft beside the published plan is read too: five queries more, whatever it holds
        assertThat(withFive).isLessThanOrEqualTo(withOne + 5);
        int again = Queries.count(() -> page("/look-ahead?plan=draft"));
        for (int more = 0; more < 4; more++) {
            aProject("Even more " + more, LocalDate.of(2027, 8, 30));
        }
        schedule.planned(branch);
        assertThat(Queries.count(() -> page("/look-ahead?plan=draft"))).isEqualTo(again);
    }

    private UUID aPlannedProject(String name, LocalDate promised) {
        schedule.crew(branch, "Crew 1");
        schedule.crew(branch, "Crew 2");
        schedule.machine(branch, "Post driver", EquipmentKind.POST_DRIVER);
        UUID project = aProject(name, promised);
        schedule.planned(branch);
        return project;
    }

    private UUID aProject(String name, LocalDate promised) {
        UUID project = projects.aDairyGroundMount()
                .named(name)
                .promised(Milestone.SYSTEM_ON, promised)
                .in(branch)
                .build();
        schedule.reach(branch, project, Stage.PERMITTED, LocalDate.of(2027, 2, 16));
        return project;
    }

    private MvcTestResult page(String address) {
        return pages.get(branch.manager(), address);
    }
}
