package org.plumbrow.project.list;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.database.BranchWall;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

/** A firm takes out its whole list however long it is: the rows come a few hundred at a time. */
@PlumbrowTest
class ListExportTest {

    private static final int MORE_THAN_ONE_PORTION = ProjectList.EXPORTED_AT_A_TIME + 50;

    @Autowired
    TestWorld world;

    @Autowired
    ProjectList list;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TransactionTemplate transaction;

    @Test
    void theServerKeepsTheRowsThatAreNotWrittenYet() {
        TestBranch branch = world.branch();
        fill(branch);
        List<String> numbers = new ArrayList<>();
        List<Integer> waiting = new ArrayList<>();

        world.as(
                branch.manager(),
                () -> list.export(everything(), row -> {
                    numbers.add(row.number());
                    if (numbers.size() == 1) {
                        waiting.add(cursors());
                    }
                }));

        assertThat(numbers).hasSize(MORE_THAN_ONE_PORTION).doesNotHaveDuplicates();
        assertThat(waiting).as("cursors that are open at the first row").containsExactly(1);
    }

    /** A result that came whole leaves no cursor behind. */
    private int cursors() {
        return jdbc.sql("select count(*) from pg_cursors where statement like '%project_line l%' and name <> ''")
                .query(Integer.class)
                .single();
    }

    private static ListFilter everything() {
        return new ListFilter(null, null, null, null, null, null, null, null, null);
    }

    private void fill(TestBranch branch) {
        BranchWall.everywhere(() -> transaction.executeWithoutResult(status -> {
            jdbc.sql("""
                    insert into project (id, version, branch_id, number, number_year, running_number, name, standing,
                                         standing_since, created_at, created_by)
                    select gen_random_uuid(), 0, :branch, :code || '-2027-' || n, 2027, n, 'Job ' || n, 'OPEN', now(), now(),
                           'Ines'
                      from generate_series(1, :many) n
                    """)
                    .param("branch", branch.id())
                    .param("code", branch.code())
                    .param("many", MORE_THAN_ONE_PORTION)
                    .update();
            jdbc.sql("""
                    insert into project_line (project_id, branch_id, shown, number, number_year, running_number, name,
                                              name_sorted, place, stage_order)
                    select id, branch_id, 'UNDER_WAY', number, number_year, running_number, name, lower(name), '', 0
                      from project where branch_id = :branch
                    """).param("branch", branch.id()).update();
        }));
    }
}
