package org.plumbrow.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestDatabase;
import org.plumbrow.TestWorld;
import org.plumbrow.database.server.TestServer;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DriverManagerDataSource;
import org.springframework.transaction.support.TransactionTemplate;

/** The wall as the application meets it: through its own role, pool and transactions. */
@PlumbrowTest
class BranchWallTest {

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TransactionTemplate transaction;

    @Autowired
    WallGuard guard;

    @Autowired
    TestWorld world;

    TestWorld.TestBranch ours;
    TestWorld.TestBranch theirs;

    @BeforeEach
    void twoBranches() {
        ours = world.branch();
        theirs = world.branch();
    }

    @Test
    void withoutAScopeThereAreNoRows() {
        assertThat(branchesSeen()).isEmpty();
    }

    @Test
    void withoutATransactionThereAreNoRows() {
        assertThat(BranchWall.within(ours.id(), () -> branches())).isEmpty();
    }

    @Test
    void withinABranchOnlyItsRowsAreSeen() {
        assertThat(BranchWall.within(ours.id(), this::branchesSeen)).containsOnly(ours.id());
    }

    @Test
    void withinTwoBranchesTheRowsOfBothAreSeen() {
        assertThat(BranchWall.within(Set.of(ours.id(), theirs.id()), this::branchesSeen))
                .containsOnly(ours.id(), theirs.id());
    }

    @Test
    void everywhereAllRowsAreSeen() {
        assertThat(BranchWall.everywhere(this::branchesSeen)).contains(ours.id(), theirs.id());
    }

    @Test
    void anInnerScopeEndsWithItsWorkEvenIfThatFails() {
        List<UUID> seen = BranchWall.within(ours.id(), () -> {
            assertThatThrownBy(() -> BranchWall.everywhere(() -> {
                        throw new IllegalStateException("broken off");
                    }))
                    .hasMessage("broken off");
            return branchesSeen();
        });
        assertThat(seen).containsOnly(ours.id());
        assertThat(branchesSeen()).isEmpty();
    }

    @Test
    void aScopeDoesNotLeakThroughThePoolIntoTheNextTransaction() {
        for (int connection = 0; connection < 20; connection++) {
            BranchWall.everywhere(this::branchesSeen);
            assertThat(branchesSeen()).isEmpty();
        }
    }

    @Test
    void aRowOfAnotherBranchCannotBeWritten() {
        assertThatThrownBy(() -> changeWithinOurs("""
                        insert into membership (person_id, branch_id, role, since) values (?, ?, 'DESIGNER', now())
                        """, ours.manager().personId(), theirs.id()))
                .isInstanceOf(DataAccessException.class)
                .rootCause()
                .hasMessageContaining("row-level security");
    }

    @Test
    void aRowCannotBeMovedIntoAnotherBranch() {
        assertThatThrownBy(() -> changeWithinOurs(
                        "update membership set branch_id = ? where branch_id = ?", theirs.id(), ours.id()))
                .isInstanceOf(DataAccessException.class)
                .rootCause()
                .hasMessageContaining("row-level security");
    }

    @Test
    void aRowOfAnotherBranchIsNotThereToBeChangedOrDeleted() {
        assertThat(changeWithinOurs("update membership set since = now() where branch_id = ?", theirs.id()))
                .isZero();
        assertThat(changeWithinOurs("delete from membership where branch_id = ?", theirs.id()))
                .isZero();
    }

    @Test
    void theGuardIsContentWithTheRoleOfTheApplication() {
        assertThat(guard.warning()).isEmpty();
    }

    @Test
    void theGuardWarnsOfARoleThatWalksThroughWalls() {
        Optional<String> warning = new WallGuard(JdbcClient.create(asTheServersOwner())).warning();
        assertThat(warning)
                .hasValueSatisfying(words -> assertThat(words)
                        .contains("THE WALL BETWEEN BRANCHES IS OPEN")
                        .contains("create role plumbrow login"));
    }

    private static DriverManagerDataSource asTheServersOwner() {
        TestServer owner = TestDatabase.server();
        return new DriverManagerDataSource(owner.url(), owner.user(), owner.password());
    }

    private int changeWithinOurs(String sql, Object... values) {
        return BranchWall.within(
                ours.id(),
                () -> transaction.execute(
                        status -> jdbc.sql(sql).params(List.of(values)).update()));
    }

    private List<UUID> branchesSeen() {
        return transaction.execute(status -> branches());
    }

    private List<UUID> branches() {
        return jdbc.sql("select distinct branch_id from membership")
                .query(UUID.class)
                .list();
    }
}
