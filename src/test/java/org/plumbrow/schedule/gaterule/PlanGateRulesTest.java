package org.plumbrow.schedule.gaterule;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.calc.duration.Milestone;
import org.plumbrow.calc.duration.Skill;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.project.Projects;
import org.plumbrow.project.Stage;
import org.plumbrow.project.gate.Finding;
import org.plumbrow.project.gate.GateLook;
import org.plumbrow.project.gate.GateRule;
import org.plumbrow.schedule.ScheduleFixture;
import org.springframework.beans.factory.annotation.Autowired;

@PlumbrowTest
class PlanGateRulesTest {

    private static final LocalDate PERMITTED_ON = LocalDate.of(2027, 2, 16);

    @Autowired
    TestWorld world;

    @Autowired
    ProjectFixture projects;

    @Autowired
    Projects facts;

    @Autowired
    ScheduleFixture schedule;

    @Autowired
    PromiseIsPlausible plausible;

    @Autowired
    PromiseIsForecastAnew anew;

    @Autowired
    SomebodyIsBooked booked;

    TestBranch branch;

    @BeforeEach
    void aBranch() {
        branch = world.branch();
    }

    @Test
    void aPromiseThatTodaysPlanKeepsIsPlausibleBeforeTheJobIsSigned() {
        schedule.crew(branch, "Crew 1");
        UUID project = promised(LocalDate.of(2027, 12, 17));
        assertThat(check(plausible, project))
                .isInstanceOf(Finding.Satisfied.class)
                .extracting(Finding::sentence)
                .asString()
                .startsWith("Today's plan reaches “system on” on ")
                .endsWith("before the promise (Fri, Dec 17).");
    }

    @Test
    void aPromiseThatTodaysPlanBreaksIsSaidWithItsDays() {
        schedule.crew(branch, "Crew 1");
        assertThat(check(plausible, promised(LocalDate.of(2027, 3, 12))))
                .isInstanceOf(Finding.Broken.class)
                .extracting(Finding::sentence)
                .asString()
                .matches(
                        "Today's plan reaches “system on” on .*, \\d+ working days after the promise \\(Fri, Mar 12\\)\\.");
    }

    @Test
    void withoutACrewWithTheSkillsNobodyCanTell() {
        schedule.crew(branch, "Crew 1", null, Skill.INSTALLER);
        assertThat(check(plausible, promised(LocalDate.of(2027, 12, 17)))).isInstanceOf(Finding.CannotTell.class);
    }

    @Test
    void withoutAPromiseNobodyCanTell() {
        UUID project = projects.aHomeRoof().withoutPromise().in(branch).build();
        assertThat(check(plausible, project).sentence()).isEqualTo("Nothing is promised yet.");
        assertThat(check(anew, project).sentence()).isEqualTo("Nothing is promised yet.");
    }

    @Test
    void aCrewIsReservedOnlyByAPublishedPlan() {
        UUID project = promised(LocalDate.of(2027, 12, 17));
        assertThat(check(booked, project).sentence()).isEqualTo("Nobody is booked yet.");
        assertThat(check(anew, project).sentence()).isEqualTo("No published plan has this promise.");
        schedule.crew(branch, "Crew 1");
        schedule.reach(branch, project, Stage.PERMITTED, PERMITTED_ON);
        schedule.planned(branch);
        assertThat(check(booked, project))
                .isInstanceOf(Finding.Satisfied.class)
                .extracting(Finding::sentence)
                .asString()
                .startsWith("Crew 1 is booked from ");
        assertThat(check(anew, project))
                .isInstanceOf(Finding.Satisfied.class)
                .extracting(Finding::sentence)
                .asString()
                .startsWith("Plan 1 reaches “system on” on ");
    }

    @Test
    void workWithoutACrewIsNamed() {
        UUID project = promised(LocalDate.of(2027, 12, 17));
        schedule.crew(branch, "Crew 1", null, Skill.INSTALLER, Skill.POST_OPERATOR, Skill.EARTH_OPERATOR);
        schedule.reach(branch, project, Stage.PERMITTED, PERMITTED_ON);
        schedule.planned(branch);
        assertThat(check(booked, project).sentence())
                .startsWith("No crew is booked for: ")
                .contains("bore")
                .contains("DC wiring");
    }

    private UUID promised(LocalDate day) {
        return projects.aDairyGroundMount()
                .promised(Milestone.SYSTEM_ON, day)
                .in(branch)
                .build();
    }

    private Finding check(GateRule rule, UUID project) {
        return schedule.inBranch(branch, () -> rule.check(new GateLook(facts.factsUnchecked(project))));
    }
}
