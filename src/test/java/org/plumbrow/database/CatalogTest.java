package org.plumbrow.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Savepoint;
import java.sql.Statement;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.plumbrow.TestDatabase;

/** Promises that every table of every room keeps; each is also seen broken, in a transaction that is rolled back. */
class CatalogTest {

    private static Connection connection;
    private static Catalog catalog;

    @BeforeAll
    static void connect() throws SQLException {
        connection = TestDatabase.copy().connect();
        catalog = new Catalog(connection);
    }

    @AfterAll
    static void disconnect() throws SQLException {
        connection.close();
    }

    @BeforeEach
    void begin() throws SQLException {
        connection.setAutoCommit(false);
    }

    @AfterEach
    void undo() throws SQLException {
        connection.rollback();
    }

    @Test
    void everyTableWithABranchIsWalled() throws SQLException {
        assertThat(catalog.unwalledTables()).isEmpty();
        run("create table loose (branch_id uuid)");
        run("create table only_enabled (branch_id uuid)");
        run("select plumbrow_wall('only_enabled')");
        run("alter table only_enabled no force row level security");
        run("create table walled (branch_id uuid)");
        run("select plumbrow_wall('walled')");
        assertThat(catalog.unwalledTables()).containsExactlyInAnyOrder("loose", "only_enabled");
    }

    @Test
    void noTableHasAnotherDoorInItsWall() throws SQLException {
        assertThat(catalog.tablesWithAnotherDoor()).isEmpty();
        run("create policy for_all on membership using (true)");
        assertThat(catalog.tablesWithAnotherDoor()).containsExactly("membership: for_all");
    }

    @Test
    void everyTableBelowABranchCarriesTheBranchItself() throws SQLException {
        assertThat(catalog.tablesBelowABranchWithoutItsId()).isEmpty();
        run("create table below (run_id uuid constraint below_run references background_run)");
        assertThat(catalog.tablesBelowABranchWithoutItsId()).containsExactly("below");
    }

    @Test
    void everyForeignKeyHasAnIndex() throws SQLException {
        assertThat(catalog.foreignKeysWithoutIndex()).isEmpty();
        run("create table slow (n integer, branch_id uuid constraint slow_branch references branch)");
        run("create index slow_wrong_order on slow (n, branch_id)");
        assertThat(catalog.foreignKeysWithoutIndex()).containsExactly("slow.slow_branch");
    }

    @Test
    void everyConstraintAndIndexHasANameOfOurs() throws SQLException {
        assertThat(catalog.namesMadeByTheSystem()).isEmpty();
        run("create table nameless (a integer unique check (a > 0), b uuid references branch, check (a < 9))");
        run("create index on nameless (b)");
        assertThat(catalog.namesMadeByTheSystem())
                .containsExactlyInAnyOrder(
                        "nameless.nameless_a_key",
                        "nameless.nameless_a_check",
                        "nameless.nameless_a_check1",
                        "nameless.nameless_b_fkey",
                        "nameless.nameless_b_idx");
    }

    @Test
    void everyAppendOnlyTableIsSoThroughout() throws SQLException {
        assertThat(catalog.appendOnlyTablesWithAGap()).isEmpty();
        run("create table half_kept (a integer)");
        run("create trigger kept before update on half_kept for each row execute function refuse_change()");
        assertThat(catalog.appendOnlyTablesWithAGap()).containsExactly("half_kept");
    }

    @ParameterizedTest
    @ValueSource(strings = {"update kept set a = 2", "delete from kept", "truncate kept"})
    void whatIsAppendOnlyRefusesToBeRewrittenByItsOwner(String change) throws SQLException {
        run("create table kept (a integer)");
        run("select plumbrow_append_only('kept')");
        run("insert into kept values (1)");
        Savepoint before = connection.setSavepoint();
        assertThatThrownBy(() -> run(change))
                .isInstanceOf(SQLException.class)
                .hasMessageContaining("kept is append-only: " + change.substring(0, change.indexOf(' ')) + " refused");
        connection.rollback(before);
        assertThat(catalog.list("select a from kept")).isEqualTo(List.of("1"));
    }

    @Test
    void theRoleCannotSwitchTheWallOffByBecomingSomebodyElse() throws SQLException {
        assertThat(catalog.list("""
                        select r.rolname from pg_roles r
                        where (r.rolsuper or r.rolbypassrls) and pg_has_role(current_user, r.oid, 'member')
                        """)).isEmpty();
    }

    private static void run(String sql) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }
}
