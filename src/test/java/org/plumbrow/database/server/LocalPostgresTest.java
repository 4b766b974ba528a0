package org.plumbrow.database.server;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.plumbrow.database.server.LocalPostgres.Durability;

/** The default server, really started. What a power cut or kill -9 does is in {@link KilledServerTest}. */
class LocalPostgresTest {

    private static final List<String> REFUSED = List.of("false");

    /** Made once: most tests only need a cluster that has been there before. */
    @TempDir
    static Path shared;

    @TempDir
    Path own;

    private Path folder = shared;

    @BeforeAll
    static void unpackOnce() {
        LocalPostgres.start(shared, Durability.KEEPS_EVERY_COMMIT).close();
    }

    @Test
    void whatWasCommittedIsThereAtTheNextStart() throws SQLException {
        try (LocalPostgres server = start()) {
            run(
                    server,
                    "create table if not exists kept (a integer)",
                    "delete from kept",
                    "insert into kept values (42)");
        }
        try (LocalPostgres server = start()) {
            assertThat(ask(server, "select a from kept")).isEqualTo("42");
        }
    }

    @Test
    void theApplicationIsNoSuperuserAndAPowerCutCostsNothing() throws SQLException {
        try (LocalPostgres server = start()) {
            assertThat(ask(server, "show fsync")).isEqualTo("on");
            assertThat(ask(server, "show synchronous_commit")).isEqualTo("on");
            assertThat(ask(server, "show timezone")).isEqualTo("UTC");
            assertThat(ask(server, "select rolsuper or rolbypassrls from pg_roles where rolname = current_user"))
                    .isEqualTo("f");
            run(server, "create extension if not exists btree_gist");
        }
    }

    @Test
    void nobodyGetsInWithoutThePassword() {
        try (LocalPostgres server = start()) {
            assertThatThrownBy(() -> DriverManager.getConnection(
                            server.superuserConnection().url(), "postgres", "guess"))
                    .isInstanceOf(SQLException.class)
                    .hasMessageContaining("password authentication failed");
        }
    }

    @Test
    void aServerLeftOverByAKilledApplicationIsStoppedAndItsRowsKept() throws SQLException, IOException {
        LocalPostgres abandoned = start();
        run(
                abandoned,
                "create table if not exists kept (a integer)",
                "delete from kept",
                "insert into kept values (42)");
        long leftOver = postmaster().orElseThrow();
        abandoned.letGo();
        try (LocalPostgres server = start()) {
            assertThat(ask(server, "select a from kept")).isEqualTo("42");
            assertThat(postmaster()).isPresent().isNotEqualTo(Optional.of(leftOver));
            await().atMost(Duration.ofSeconds(5))
                    .until(() -> ProcessHandle.of(leftOver)
                            .filter(ProcessHandle::isAlive)
                            .isEmpty());
        }
    }

    @Test
    void aProcessThatHasTheNumberOfAFormerServerIsLeftAlone() throws Exception {
        start().close();
        Process innocent = new ProcessBuilder("sleep", "60").start();
        try {
            Path pidFile = folder.resolve("postgres").resolve("postmaster.pid");
            long longAgo = Instant.now().minusSeconds(86_400).getEpochSecond();
            Files.writeString(pidFile, innocent.pid() + "\n" + pidFile.getParent() + "\n" + longAgo + "\n5432\n\n\n");
            try (LocalPostgres server = start()) {
                assertThat(ask(server, "select 1")).isEqualTo("1");
                assertThat(innocent.isAlive()).isTrue();
            }
        } finally {
            innocent.destroyForcibly();
        }
    }

    @Test
    void aFirstStartThatWasBrokenOffBeginsAnew() throws Exception {
        folder = newFolder();
        Path unfinished = Files.createDirectories(folder.resolve("postgres.new"));
        Files.writeString(unfinished.resolve("PG_VERSION"), "17\n");
        try (LocalPostgres server = start()) {
            assertThat(ask(server, "select 1")).isEqualTo("1");
            assertThat(unfinished).doesNotExist();
        }
    }

    @Test
    void dataOfAnotherMajorVersionAreNotTouched() throws IOException {
        folder = newFolder();
        Path cluster = Files.createDirectories(folder.resolve("postgres"));
        Files.writeString(cluster.resolve("PG_VERSION"), "16\n");
        assertThatThrownBy(this::start)
                .isInstanceOf(ServerUnusable.class)
                .hasMessageContaining("of PostgreSQL version 16; this program brings version 17");
        DataFolder.take(folder).close();
    }

    @Test
    void aServerThatCannotStartSaysItsLastWords() throws IOException {
        folder = newFolder();
        Path cluster = Files.createDirectories(folder.resolve("postgres"));
        Files.writeString(cluster.resolve("PG_VERSION"), "17\n");
        assertThatThrownBy(this::start)
                .isInstanceOf(ServerUnusable.class)
                .hasMessageContaining("did not start")
                .hasMessageContaining("postgres");
    }

    @Test
    void rootWithoutNamespacesRunsItAsNobodyAndBack() throws Exception {
        assumeThat(System.getProperty("user.name"))
                .as("only root changes accounts")
                .isEqualTo("root");
        assumeThat(Files.isExecutable(Path.of("/usr/bin/setpriv"))).isTrue();
        try (LocalPostgres server = start()) {
            run(
                    server,
                    "create table if not exists kept (a integer)",
                    "delete from kept",
                    "insert into kept values (42)");
        }
        try (LocalPostgres server = LocalPostgres.start(folder, Durability.KEEPS_EVERY_COMMIT, REFUSED)) {
            assertThat(ask(server, "select a from kept")).isEqualTo("42");
            assertThat(owner()).isEqualTo(65534);
        }
        try (LocalPostgres server = start()) {
            assertThat(ask(server, "select a from kept")).isEqualTo("42");
            assertThat(owner()).isEqualTo(0);
        }
    }

    @Test
    void rootIsToldWhatToDoWhereNobodyElseCanReachTheFolder() throws Exception {
        assumeThat(System.getProperty("user.name"))
                .as("only root changes accounts")
                .isEqualTo("root");
        Path shut = Files.createDirectory(own.resolve("shut"));
        Files.setPosixFilePermissions(shut, PosixFilePermissions.fromString("rwx------"));
        assertThatThrownBy(() -> LocalPostgres.start(shut.resolve("data"), Durability.KEEPS_EVERY_COMMIT, REFUSED))
                .isInstanceOf(ServerUnusable.class)
                .hasMessageContaining("PostgreSQL does not run as root");
    }

    /** A folder of its own with the server already unpacked. */
    private Path newFolder() throws IOException {
        Files.createSymbolicLink(own.resolve("postgres-binaries"), shared.resolve("postgres-binaries"));
        return own;
    }

    private Object owner() throws IOException {
        return Files.getAttribute(folder.resolve("postgres"), "unix:uid", LinkOption.NOFOLLOW_LINKS);
    }

    private Optional<Long> postmaster() throws IOException {
        return Files.readAllLines(folder.resolve("postgres").resolve("postmaster.pid")).stream()
                .findFirst()
                .map(Long::valueOf);
    }

    private LocalPostgres start() {
        return LocalPostgres.start(folder, Durability.KEEPS_EVERY_COMMIT);
    }

    private static void run(LocalPostgres server, String... statements) throws SQLException {
        try (Connection connection = connect(server);
                Statement statement = connection.createStatement()) {
            for (String sql : statements) {
                statement.execute(sql);
            }
        }
    }

    private static String ask(LocalPostgres server, String query) throws SQLException {
        try (Connection connection = connect(server);
                Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(query)) {
            rows.next();
            return rows.getString(1);
        }
    }

    private static Connection connect(LocalPostgres server) throws SQLException {
        LocalPostgres.Connection to = server.ordinaryConnection("plumbrow");
        return DriverManager.getConnection(to.url(), to.user(), to.password());
    }
}
