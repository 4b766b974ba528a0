package org.plumbrow.database.server;

import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;

/**
 * The role as which the application connects: it owns its database and nothing else. A superuser would walk through the
 * wall between the branches without noticing.
 */
final class OrdinaryRole {

    static final String SUPERUSER = "postgres";
    static final String NAME = "plumbrow";

    private OrdinaryRole() {}

    /**
     * Makes the role and its database where they are missing and gives the role a new password for this run.
     *
     * @return how the application connects
     */
    static LocalPostgres.Connection ensure(LocalPostgres.Connection superuser, String database) throws SQLException {
        String password = DataFolder.randomWord();
        try (java.sql.Connection connection =
                        DriverManager.getConnection(superuser.url(), superuser.user(), superuser.password());
                Statement statement = connection.createStatement()) {
            if (isMissing(statement, "select 1 from pg_roles where rolname = '" + NAME + "'")) {
                statement.execute("create role " + NAME + " login");
            }
            statement.execute("alter role " + NAME + " nosuperuser nobypassrls nocreatedb nocreaterole password '"
                    + password + "'");
            if (isMissing(statement, "select 1 from pg_database where datname = '" + database + "'")) {
                statement.execute("create database " + database + " owner " + NAME);
            }
        }
        return new LocalPostgres.Connection(superuser.toDatabase(database).url(), NAME, password);
    }

    private static boolean isMissing(Statement statement, String query) throws SQLException {
        try (ResultSet rows = statement.executeQuery(query)) {
            return !rows.next();
        }
    }
}
