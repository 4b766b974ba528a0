package org.plumbrow.database.server;

import java.nio.file.Files;
import java.nio.file.Path;
import org.testcontainers.DockerClientFactory;
import org.testcontainers.postgresql.PostgreSQLContainer;

/**
 * The PostgreSQL server under the tests, one per JVM: the one named by PLUMBROW_TEST_DATABASE_URL, else a container
 * where an engine answers, else the server that comes with the program, kept in target/test-database between builds.
 *
 * @param url of a database that may be left alone, for making others
 * @param user may create roles and databases
 */
public record TestServer(String url, String user, String password) {

    private static final int FOLDERS_TRIED = 4;

    public static TestServer start() {
        String named = System.getenv("PLUMBROW_TEST_DATABASE_URL");
        if (named != null && !named.isBlank()) {
            return new TestServer(
                    named,
                    System.getenv().getOrDefault("PLUMBROW_TEST_DATABASE_USER", "postgres"),
                    System.getenv().getOrDefault("PLUMBROW_TEST_DATABASE_PASSWORD", ""));
        }
        return anEngineAnswers() ? inContainer() : onThisMachine();
    }

    private static boolean anEngineAnswers() {
        boolean socket = Files.exists(Path.of("/var/run/docker.sock")) || System.getenv("DOCKER_HOST") != null;
        return socket && DockerClientFactory.instance().isDockerAvailable();
    }

    @SuppressWarnings("resource") // lives as long as the JVM; the container library removes it afterwards
    private static TestServer inContainer() {
        PostgreSQLContainer container =
                new PostgreSQLContainer("postgres:" + ServerBinaries.MAJOR_VERSION).withCommand("-c", "fsync=off");
        container.start();
        return new TestServer(container.getJdbcUrl(), container.getUsername(), container.getPassword());
    }

    private static TestServer onThisMachine() {
        LocalPostgres server = startInFreeFolder();
        Runtime.getRuntime().addShutdownHook(new Thread(server::close));
        LocalPostgres.Connection superuser = server.superuserConnection();
        return new TestServer(superuser.url(), superuser.user(), superuser.password());
    }

    /** Two test runs in one checkout do not wait for each other. */
    private static LocalPostgres startInFreeFolder() {
        for (int number = 1; ; number++) {
            String name = number == 1 ? "test-database" : "test-database-" + number;
            try {
                return LocalPostgres.start(Path.of("target", name), LocalPostgres.Durability.MAY_FORGET);
            } catch (ServerUnusable inUse) {
                if (number == FOLDERS_TRIED || !inUse.getMessage().contains("in use")) {
                    throw inUse;
                }
            }
        }
    }
}
