package org.plumbrow.database.server;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.SQLException;
import java.util.List;
import org.springframework.util.FileSystemUtils;

/**
 * The default server: a real PostgreSQL from a library, its data kept in a folder between starts.
 * <p>Whatever ends this process, the next start finds every committed row: a server left over is stopped first, an
 * unfinished cluster is made anew, and one folder is held by one instance at a time.
 */
final class LocalPostgres implements AutoCloseable {

    private static final int ATTEMPTS = 20;

    /** The port was taken meanwhile, or the last workers of a killed server have not left yet. */
    private static final List<String> PASSING_OBSTACLES =
            List.of("could not create any TCP/IP sockets", "pre-existing shared memory block");

    private static final long LOG_LIMIT_BYTES = 10L * 1024 * 1024;

    private final DataFolder folder;
    private final ServerCommands commands;
    private final Durability durability;
    private final String secret;
    private int port;

    private LocalPostgres(DataFolder folder, ServerCommands commands, Durability durability, String secret) {
        this.folder = folder;
        this.commands = commands;
        this.durability = durability;
        this.secret = secret;
    }

    /** How much a power cut may cost. */
    enum Durability {
        /** Nothing that was committed. */
        KEEPS_EVERY_COMMIT("-c fsync=on", "fast"),
        /** Everything: for tests, which make their data anew. */
        MAY_FORGET("-c fsync=off -c synchronous_commit=off -c full_page_writes=off", "immediate");

        private final String settings;
        private final String stopMode;

        Durability(String settings, String stopMode) {
            this.settings = settings;
            this.stopMode = stopMode;
        }
    }

    /** @throws ServerUnusable with a sentence for the person at the console */
    static LocalPostgres start(Path dataFolder, Durability durability) {
        return start(dataFolder, durability, ServerAccount.NAMESPACE);
    }

    static LocalPostgres start(Path dataFolder, Durability durability, List<String> namespace) {
        DataFolder folder = DataFolder.take(dataFolder);
        try {
            ServerAccount account = ServerAccount.choose(folder.root(), namespace);
            Path binaries = ServerBinaries.unpack(folder.root());
            LocalPostgres server = new LocalPostgres(
                    folder, new ServerCommands(folder, binaries, account), durability, folder.secret());
            server.prepare(account);
            server.start();
            return server;
        } catch (IOException e) {
            folder.close();
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            folder.close();
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        } catch (RuntimeException e) {
            folder.close();
            throw e;
        }
    }

    private void prepare(ServerAccount account) throws IOException, InterruptedException {
        rotateLog();
        FileSystemUtils.deleteRecursively(folder.unfinishedCluster());
        for (Path path : List.of(folder.secretFile(), folder.serverLog(), folder.cluster())) {
            account.own(path);
        }
        if (Files.notExists(folder.cluster())) {
            makeCluster(account);
        }
        Path version = folder.cluster().resolve("PG_VERSION");
        String found = Files.exists(version) ? Files.readString(version).strip() : "none";
        if (!found.equals(ServerBinaries.MAJOR_VERSION)) {
            throw new ServerUnusable(
                    "The data in " + folder.cluster() + " are of PostgreSQL version " + found
                            + "; this program brings version " + ServerBinaries.MAJOR_VERSION + ".",
                    "Start the release that wrote them and take the data out there, or name another folder with"
                            + " PLUMBROW_DATA_DIR.");
        }
    }

    private void rotateLog() throws IOException {
        Path log = folder.serverLog();
        if (Files.notExists(log)) {
            Files.createFile(log);
        } else if (Files.size(log) > LOG_LIMIT_BYTES) {
            Files.move(log, log.resolveSibling("server.log.old"), StandardCopyOption.REPLACE_EXISTING);
            Files.createFile(log);
        }
    }

    private void makeCluster(ServerAccount account) throws IOException, InterruptedException {
        Path unfinished = Files.createDirectory(folder.unfinishedCluster());
        account.own(unfinished);
        commands.must(
                "initdb",
                List.of(
                        "-D",
                        unfinished.toString(),
                        "-U",
                        OrdinaryRole.SUPERUSER,
                        "-A",
                        "scram-sha-256",
                        "--pwfile",
                        folder.secretFile().toString(),
                        "-E",
                        "UTF8",
                        "--locale-provider=builtin",
                        "--builtin-locale=C.UTF-8",
                        "--locale=C"));
        Files.move(unfinished, folder.cluster(), StandardCopyOption.ATOMIC_MOVE);
    }

    private void start() throws IOException, InterruptedException {
        LeftOverServer.of(folder.cluster()).stop(commands);
        for (int attempt = 1; !startOnce(); attempt++) {
            if (attempt == ATTEMPTS || !commands.lastWordsContain(PASSING_OBSTACLES)) {
                throw commands.failed("pg_ctl");
            }
            Thread.sleep(1000);
        }
    }

    private boolean startOnce() throws IOException, InterruptedException {
        port = freePort();
        String settings = "-p " + port + " -c listen_addresses=127.0.0.1 -c unix_socket_directories="
                + " -c max_connections=60 -c timezone=UTC " + durability.settings;
        return commands.run(
                "pg_ctl",
                List.of(
                        "-D",
                        folder.cluster().toString(),
                        "-w",
                        "-t",
                        "60",
                        "-l",
                        folder.serverLog().toString(),
                        "-o",
                        settings,
                        "start"));
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        }
    }

    /** Makes sure of the ordinary role and its database. @return how the application connects */
    Connection ordinaryConnection(String database) {
        try {
            return OrdinaryRole.ensure(superuserConnection(), database);
        } catch (SQLException e) {
            throw new ServerUnusable(
                    "The database on this machine refused its own keeper: " + e.getMessage(),
                    "Read " + folder.serverLog() + ".",
                    e);
        }
    }

    Connection superuserConnection() {
        return new Connection(url("postgres"), OrdinaryRole.SUPERUSER, secret);
    }

    private String url(String database) {
        return "jdbc:postgresql://127.0.0.1:" + port + "/" + database;
    }

    Path dataFolder() {
        return folder.root();
    }

    /** How to reach a database. */
    record Connection(String url, String user, String password) {
        Connection toDatabase(String database) {
            return new Connection(url.substring(0, url.lastIndexOf('/') + 1) + database, user, password);
        }
    }

    /** Gives the folder free and leaves the server running, as a killed application does. */
    void letGo() {
        folder.close();
    }

    @Override
    public void close() {
        try {
            commands.run(
                    "pg_ctl",
                    List.of("-D", folder.cluster().toString(), "-m", durability.stopMode, "-w", "-t", "60", "stop"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            folder.close();
        }
    }
}
