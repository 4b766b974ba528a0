package org.plumbrow.project.list;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.database.BranchWall;
import org.plumbrow.project.ProjectFixture;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.TestContextManager;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * The list of projects as a whole page, from the request to the last byte of HTML: security, wall, queries on a real
 * PostgreSQL, template. Only the network is left out. Bar: the 95th percentile is the same at 50 and at 100,000 projects.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 5)
@Measurement(iterations = 5, time = 5)
public class ProjectListBenchmark {

    @Param({"50", "10000", "100000"})
    public int projects;

    @Param({"", "?late=yes&sort=promise", "?q=alder 7", "?stage=permitted&sort=name", "?page=20"})
    public String address;

    private final House house = new House();
    private TestBranch branch;

    /** The application as the tests have it. */
    @PlumbrowTest
    static class House {
        @Autowired
        MockMvcTester mvc;

        @Autowired
        TestWorld world;

        @Autowired
        ProjectFixture projects;

        @Autowired
        JdbcClient jdbc;

        @Autowired
        TransactionTemplate transaction;
    }

    @Setup
    public void open() throws Exception {
        new TestContextManager(House.class).prepareTestInstance(house);
        branch = house.world.branch();
        house.projects.aHomeRoof().in(branch).build();
        BranchWall.everywhere(() -> house.transaction.execute(status -> multiply()));
        if (page().length() < 20_000) {
            throw new IllegalStateException("The page is not the list of projects.");
        }
    }

    @Benchmark
    public String page() throws Exception {
        MvcTestResult answer = house.mvc
                .get()
                .uri("/projects" + address)
                .with(house.world.signedIn(branch.projectManager()))
                .exchange();
        return answer.getResponse().getContentAsString();
    }

    /** Copies the one project; one in seven is late, the stages are spread evenly, one in three is commissioned. */
    private int multiply() {
        house.jdbc
                .sql("""
                        insert into project select (jsonb_populate_record(p, jsonb_build_object(
                                 'id', gen_random_uuid(), 'running_number', n, 'number', p.number || '-' || n))).*
                          from project p, generate_series(2, :projects) n where p.branch_id = :branch""")
                .param("projects", projects)
                .param("branch", branch.id())
                .update();
        house.jdbc.sql("""
                        insert into project_line select (jsonb_populate_record(l, jsonb_build_object(
                                 'project_id', p.id, 'running_number', p.running_number, 'number', p.number,
                                 'name', 'Alder Lane ' || p.running_number, 'name_sorted', 'alder lane ' || p.running_number,
                                 'shown', case when p.running_number % 3 = 0 then 'COMMISSIONED' else 'UNDER_WAY' end,
                                 'stage_order', p.running_number % 7, 'late', p.running_number % 7 = 1,
                                 'acts_by', date '2027-03-01' + p.running_number % 200,
                                 'promised_on', date '2027-03-01' + p.running_number % 300))).*
                          from project_line l, project p
                         where l.branch_id = :branch and p.branch_id = :branch and p.running_number > 1""").param("branch", branch.id()).update();
        house.jdbc.sql("""
                        insert into project_word (branch_id, word, project_id)
                        select branch_id, unnest(array['alder', 'lane', running_number::text]), project_id
                          from project_line where branch_id = :branch on conflict do nothing""").param("branch", branch.id()).update();
        return house.jdbc.sql("analyze").update();
    }
}
