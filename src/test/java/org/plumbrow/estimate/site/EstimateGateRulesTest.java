package org.plumbrow.estimate.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.estimate.EstimateFacts;
import org.plumbrow.estimate.Estimates;
import org.plumbrow.estimate.site.SizeLimits.Limit;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.project.Projects;
import org.plumbrow.project.gate.Finding;
import org.plumbrow.project.gate.GateLook;
import org.plumbrow.project.gate.GateRule;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

/** What the gates say of use, size, weather, shade and the contract's kWh. */
@PlumbrowTest
class EstimateGateRulesTest {

    @Autowired
    TestWorld world;

    @Autowired
    ProjectFixture projects;

    @Autowired
    EstimateFixture fixture;

    @Autowired
    Projects facts;

    @Autowired
    Estimates estimates;

    @Autowired
    YieldEditing editing;

    @Autowired
    YieldRows rows;

    @Autowired
    List<GateRule> rules;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TransactionTemplate transaction;

    private TestBranch branch;
    private UUID project;

    @BeforeEach
    void aDairy() {
        branch = world.branch();
        project = projects.aDairyGroundMount().in(branch).build();
    }

    private Finding ask(String item) {
        GateRule rule = rules.stream()
                .filter(each -> each.item().equals(item))
                .findFirst()
                .orElseThrow();
        return world.as(
                branch.manager(),
                () -> transaction.execute(status -> rule.check(new GateLook(facts.factsUnchecked(project)))));
    }

    private EstimateFacts computed() {
        fixture.weather(branch, "Valley means");
        world.as(branch.manager(), () -> editing.compute(project));
        return world.as(branch.manager(), () -> estimates.of(project)).orElseThrow();
    }

    @Test
    void withNothingRecordedEachCannotTell() {
        assertThat(ask("signed.6")).isInstanceOf(Finding.CannotTell.class);
        assertThat(ask("designed.14")).isInstanceOf(Finding.CannotTell.class);
        assertThat(ask("designed.15")).isInstanceOf(Finding.CannotTell.class);
    }

    @Test
    void aSizeWithinUseAndCapsIsInOrder() {
        EstimateFacts estimate = computed();
        fixture.use(branch, project, "Barn", estimate.kwh() / 12);
        Finding finding = ask("signed.6");
        assertThat(finding).isInstanceOf(Finding.Satisfied.class);
        assertThat(finding.sentence())
                .startsWith("99.0 kW DC make ")
                .contains("100.0 % of the year’s use; 75.0 kW AC. No cap is set.");
    }

    @Test
    void moreThanTheUsualShareWithoutACapIsBroken() {
        EstimateFacts estimate = computed();
        fixture.use(branch, project, "Barn", estimate.kwh() / 12 / 1.2);
        assertThat(ask("signed.6")).isInstanceOf(Finding.Broken.class);
    }

    @Test
    void aCapIsNamedWithWhoseItIs() {
        EstimateFacts estimate = computed();
        double use = estimate.kwh() / 1.08;
        Limit policy = new Limit(null, 0, "Branch policy", 110.0, null);
        Limit utility = new Limit(null, 0, "Valley Electric", null, 50.0);
        assertThat(EstimateGateRules.size(use, estimate, List.of(policy))).isInstanceOf(Finding.Satisfied.class);
        assertThat(EstimateGateRules.size(use, estimate, List.of(policy, utility))
                        .sentence())
                .endsWith("Valley Electric allows at most 50.0 kW AC.");
        assertThat(EstimateGateRules.size(use / 1.1, estimate, List.of(policy)).sentence())
                .endsWith("Branch policy allows at most 110.0 % of the use.");
    }

    private void horizonIsRead(String elevation) {
        world.as(
                branch.manager(),
                () -> transaction.execute(status -> jdbc.sql("""
                insert into survey_part (project_id, part, branch_id, version, readings, changed_at, changed_by)
                values (:project, 'SHADE', :branch, 1, jsonb_build_object('h_120', :height, 'h_180', :height,
                        'h_240', :height), now(), 'Wim')
                """)
                        .param("project", project)
                        .param("branch", branch.id())
                        .param("height", elevation)
                        .update()));
    }

    @Test
    void theSurveysHorizonIsAppliedAndTakesItsPart() {
        double open = computed().kwh();
        Finding without = ask("designed.14");
        assertThat(without).isInstanceOf(Finding.CannotTell.class);
        assertThat(without.sentence()).contains("“Valley means”", "made from twelve monthly means", "invented");
        horizonIsRead("25");
        EstimateFacts shaded = computed2();
        assertThat(shaded.horizonApplied()).isTrue();
        assertThat(shaded.kwh()).isLessThan(0.95 * open);
        assertThat(ask("designed.14")).isInstanceOf(Finding.Satisfied.class);
        world.as(branch.projectManager(), () -> {
            YieldRows.Kept kept = rows.terms(project);
            YieldTerms usual = YieldTerms.USUAL;
            return editing.change(
                    project,
                    kept.version(),
                    null,
                    new YieldTerms(
                            usual.losses(),
                            usual.snowPercent(),
                            usual.yearPercent(),
                            null,
                            usual.sky(),
                            usual.albedo(),
                            usual.gammaPercent(),
                            usual.efficiencyPercent(),
                            false,
                            List.of()));
        });
        assertThat(ask("designed.14")).isInstanceOf(Finding.Broken.class);
    }

    private EstimateFacts computed2() {
        world.as(branch.manager(), () -> editing.compute(project));
        return world.as(branch.manager(), () -> estimates.of(project)).orElseThrow();
    }

    @Test
    void anEstimateWellBelowTheContractIsBroken() {
        EstimateFacts estimate = computed();
        int contract = 118_800;
        Finding finding = ask("designed.15");
        assertThat(finding.sentence()).contains("the contract’s figure 118,800 kWh");
        assertThat(finding)
                .isInstanceOf(estimate.kwh() >= 0.98 * contract ? Finding.Satisfied.class : Finding.Broken.class);
        horizonIsRead("40");
        computed2();
        assertThat(ask("designed.15")).isInstanceOf(Finding.Broken.class);
        assertThat(ask("designed.15").sentence()).endsWith("% less.");
    }
}
