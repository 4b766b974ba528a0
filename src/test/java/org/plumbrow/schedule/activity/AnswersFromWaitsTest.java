package org.plumbrow.schedule.activity;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.permit.Awaited;
import org.plumbrow.permit.AwaitedBook;
import org.plumbrow.permit.AwaitedKind;
import org.plumbrow.permit.OwedBy;
import org.plumbrow.project.ProjectFixture;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

/** What is written on the page of waits stands in the plan's activity: asked for, promised, came. */
@PlumbrowTest
class AnswersFromWaitsTest {

    private static final LocalDate SENT = LocalDate.of(2027, 2, 1);
    private static final LocalDate PROMISED = LocalDate.of(2027, 3, 10);
    private static final LocalDate CAME = LocalDate.of(2027, 2, 26);

    @Autowired
    TestWorld world;

    @Autowired
    ProjectFixture projects;

    @Autowired
    AwaitedBook book;

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

    private Awaited modules(UUID id, long version, @Nullable LocalDate promised, @Nullable LocalDate came) {
        return new Awaited(
                id,
                version,
                project,
                AwaitedKind.MODULES_DELIVERY,
                "",
                "",
                OwedBy.SUPPLIER,
                null,
                null,
                "Alder Supply",
                SENT,
                promised,
                null,
                null,
                came,
                null,
                null,
                "");
    }

    private Map<String, Object> activity() {
        return world.as(
                branch.projectManager(),
                () -> transaction.execute(
                        status -> jdbc.sql("""
                        select started_on::text as started, answer_expected::text as expected, finished_on::text as finished
                          from activity where project_id = ? and key = 'modules-delivery'
                        """).param(project).query().singleRow()));
    }

    @Test
    void askedForPromisedAndCame() {
        UUID one = UUID.randomUUID();
        UUID two = UUID.randomUUID();
        world.as(branch.projectManager(), () -> book.add(modules(one, -1, PROMISED, null)));
        world.as(branch.projectManager(), () -> book.add(modules(two, -1, PROMISED.plusDays(9), null)));
        assertThat(activity()).containsEntry("started", "2027-02-01").containsEntry("expected", "2027-03-19");
        world.as(branch.projectManager(), () -> book.change(modules(two, 0, PROMISED.plusDays(9), CAME)));
        assertThat(activity()).containsEntry("expected", "2027-03-10").containsEntry("finished", null);
        world.as(branch.projectManager(), () -> book.change(modules(one, 0, PROMISED, CAME.minusDays(1))));
        assertThat(activity()).containsEntry("finished", "2027-02-26").containsEntry("expected", null);
    }
}
