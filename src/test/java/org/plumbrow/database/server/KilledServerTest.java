package org.plumbrow.database.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.plumbrow.PlumbrowApplication;

/** Durability of the default start, proven with kill -9 on processes of its own. Slow: run with -Dplumbrow.slow=true. */
@Tag("slow")
@EnabledIfSystemProperty(
        named = "plumbrow.slow",
        matches = "true",
        disabledReason = "slow; -Dplumbrow.slow=true runs it")
class KilledServerTest {

    private static final int ROUNDS = 4;
    private static final int ROWS_A_ROUND = 400;

    @TempDir
    Path folder;

    @Test
    void everyPromisedRowIsThereWhateverWasKilled() throws Exception {
        Set<String> promised = new HashSet<>();
        for (int round = 0; round < ROUNDS; round++) {
            boolean serverToo = round % 2 == 1;
            promised.addAll(commitAndKill("round" + round, serverToo));
        }
        try (LocalPostgres server = LocalPostgres.start(folder, LocalPostgres.Durability.KEEPS_EVERY_COMMIT)) {
            assertThat(rows(server)).containsAll(promised);
        }
    }

    @Test
    void aSecondApplicationOnTheSameFolderIsRefusedInOneParagraph() throws Exception {
        try (LocalPostgres held = LocalPostgres.start(folder, LocalPostgres.Durability.KEEPS_EVERY_COMMIT)) {
            Process second = java(
                    PlumbrowApplication.class.getName(),
                    "--plumbrow.data-dir=" + held.dataFolder(),
                    "--server.port=0",
                    "--spring.main.banner-mode=off");
            String said = new String(second.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(second.waitFor(60, TimeUnit.SECONDS)).isTrue();
            assertThat(second.exitValue()).isEqualTo(1);
            assertThat(said)
                    .contains("APPLICATION FAILED TO START")
                    .contains("is in use by another running instance")
                    .doesNotContain("Caused by");
        }
    }

    /** @return the rows whose commit was acknowledged before the kill */
    private List<String> commitAndKill(String round, boolean serverToo) throws Exception {
        Process program = java(CommittingProgram.class.getName(), folder.toString(), round);
        List<String> promised = new ArrayList<>();
        List<String> said = new ArrayList<>();
        try (BufferedReader lines = program.inputReader(StandardCharsets.UTF_8)) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                (line.startsWith(round) ? promised : said).add(line);
                if (promised.size() == ROWS_A_ROUND) {
                    kill(program.toHandle());
                    if (serverToo) {
                        kill(postmaster());
                    }
                }
            }
        }
        assertThat(program.waitFor(30, TimeUnit.SECONDS)).isTrue();
        assertThat(promised).as("%s of %s", said, round).hasSizeGreaterThanOrEqualTo(ROWS_A_ROUND);
        return promised;
    }

    private ProcessHandle postmaster() throws IOException {
        String pid = Files.readAllLines(folder.resolve("postgres").resolve("postmaster.pid"))
                .get(0);
        return ProcessHandle.of(Long.parseLong(pid.strip())).orElseThrow();
    }

    private static void kill(ProcessHandle process) {
        assertThat(process.destroyForcibly()).isTrue();
    }

    private static Process java(String... mainClassAndArguments) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                ProcessHandle.current().info().command().orElseThrow(),
                "-Xmx512m",
                "-cp",
                System.getProperty("java.class.path")));
        command.addAll(List.of(mainClassAndArguments));
        return new ProcessBuilder(command).redirectErrorStream(true).start();
    }

    private static Set<String> rows(LocalPostgres server) throws Exception {
        LocalPostgres.Connection to = server.ordinaryConnection("plumbrow");
        Set<String> found = new HashSet<>();
        try (Connection connection = DriverManager.getConnection(to.url(), to.user(), to.password());
                Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("select word from promised")) {
            while (rows.next()) {
                found.add(rows.getString(1));
            }
        }
        return found;
    }
}
