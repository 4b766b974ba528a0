package org.plumbrow.database.server;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.Statement;
import java.util.stream.IntStream;

/** A program to be killed: starts the default server, commits rows without end and prints each one it was promised. */
final class CommittingProgram {

    private static final int WRITERS = 3;

    private CommittingProgram() {}

    public static void main(String[] arguments) throws Exception {
        LocalPostgres server = LocalPostgres.start(Path.of(arguments[0]), LocalPostgres.Durability.KEEPS_EVERY_COMMIT);
        LocalPostgres.Connection to = server.ordinaryConnection("plumbrow");
        try (Connection connection = DriverManager.getConnection(to.url(), to.user(), to.password());
                Statement statement = connection.createStatement()) {
            statement.execute("create table if not exists promised (word text primary key)");
        }
        IntStream.range(0, WRITERS).forEach(writer -> new Thread(() -> write(to, arguments[1] + "-" + writer)).start());
    }

    private static void write(LocalPostgres.Connection to, String name) {
        try (Connection connection = DriverManager.getConnection(to.url(), to.user(), to.password());
                PreparedStatement insert = connection.prepareStatement("insert into promised values (?)")) {
            for (int number = 0; ; number++) {
                String word = name + "-" + number;
                insert.setString(1, word);
                insert.executeUpdate();
                System.out.println(word); // one write, so that a line is whole or not there
            }
        } catch (java.sql.SQLException killed) {
            // the server went first
        }
    }
}
