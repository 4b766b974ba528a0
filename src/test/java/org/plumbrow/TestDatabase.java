package org.plumbrow;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import org.flywaydb.core.Flyway;
import org.plumbrow.database.server.TestServer;
import org.springframework.boot.test.util.TestPropertyValues;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.test.context.ContextConfigurationAttributes;
import org.springframework.test.context.ContextCustomizer;
import org.springframework.test.context.ContextCustomizerFactory;
import org.springframework.test.context.MergedContextConfiguration;

/**
 * An own database for each Spring context of the tests: migrated once per JVM, then copied in a tenth of a second.
 * Connected to as an ordinary role, or nothing could be said about the wall between branches.
 *
 * @param user ordinary role that owns the database
 */
public record TestDatabase(String url, String user, String password) {

    private static final String RUN = UUID.randomUUID().toString().substring(0, 8);
    private static final String ROLE = "plumbrow_test_" + RUN;
    private static final String TEMPLATE = ROLE + "_template";
    private static final AtomicInteger COPIES = new AtomicInteger();
    private static final TestServer SERVER = TestServer.start();

    static {
        execute("create role " + ROLE + " login nosuperuser nobypassrls password '" + RUN + "'");
        execute("create database " + TEMPLATE + " owner " + ROLE);
        Flyway.configure()
                .dataSource(urlOf(TEMPLATE), ROLE, RUN)
                .locations("classpath:db/migration")
                .load()
                .migrate();
        Runtime.getRuntime().addShutdownHook(new Thread(TestDatabase::dropAll));
    }

    /** @return a new, migrated, empty database */
    public static TestDatabase copy() {
        String name = ROLE + "_" + COPIES.incrementAndGet();
        execute("create database " + name + " template " + TEMPLATE + " owner " + ROLE);
        return new TestDatabase(urlOf(name), ROLE, RUN);
    }

    /** @return the settings that make an application use this database */
    public List<String> properties() {
        return List.of(
                "spring.datasource.url=" + url,
                "spring.datasource.username=" + user,
                "spring.datasource.password=" + password,
                "spring.test.database.replace=none");
    }

    /** @return a connection of the application's role, outside Spring */
    public Connection connect() throws SQLException {
        return DriverManager.getConnection(url, user, password);
    }

    /** @return the server under all copies, with a role that may do anything there */
    public static TestServer server() {
        return SERVER;
    }

    private static String urlOf(String database) {
        String url = SERVER.url();
        int question = url.indexOf('?');
        String path = question < 0 ? url : url.substring(0, question);
        String options = question < 0 ? "" : url.substring(question);
        return path.substring(0, path.lastIndexOf('/') + 1) + database + options;
    }

    private static void execute(String sql) {
        try (Connection connection = DriverManager.getConnection(SERVER.url(), SERVER.user(), SERVER.password());
                Statement statement = connection.createStatement()) {
            statement.execute(sql);
        } catch (SQLException e) {
            throw new IllegalStateException(sql, e);
        }
    }

    /** Tests leave no database behind on a server that outlives them. */
    private static void dropAll() {
        try {
            execute("drop database if exists " + TEMPLATE + " with (force)");
            for (int copy = 1; copy <= COPIES.get(); copy++) {
                execute("drop database if exists " + ROLE + "_" + copy + " with (force)");
            }
            execute("drop role if exists " + ROLE);
        } catch (IllegalStateException serverAlreadyGone) {
            // the server of this machine is stopped by a hook of its own
        }
    }

    /** Puts a copy under every Spring context; found through META-INF/spring.factories. */
    static final class Factory implements ContextCustomizerFactory {
        @Override
        public ContextCustomizer createContextCustomizer(
                Class<?> testClass, List<ContextConfigurationAttributes> attributes) {
            return new Customizer();
        }
    }

    /** A record, hence equal to its like: contexts are found again in the cache. */
    record Customizer() implements ContextCustomizer {
        @Override
        public void customizeContext(ConfigurableApplicationContext context, MergedContextConfiguration merged) {
            TestPropertyValues.of(copy().properties()).applyTo(context);
        }
    }
}
