package org.plumbrow.database.server;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a former run left behind: a server whose application was killed lives on. The folder's lock is ours by then, so
 * the server is nobody else's.
 *
 * @param process that has the number which the former server wrote down; it may be another program's by now
 */
record LeftOverServer(Path pidFile, List<String> lines, Optional<ProcessHandle> process) {

    /** No process ever has this number. */
    private static final String NOBODY = "2147483646";

    private static final int LINE_OF_START = 2;

    static LeftOverServer of(Path cluster) throws IOException {
        Path pidFile = cluster.resolve("postmaster.pid");
        List<String> lines = Files.exists(pidFile) ? Files.readAllLines(pidFile) : List.of();
        Optional<ProcessHandle> process = lines.size() > LINE_OF_START
                ? ProcessHandle.of(Long.parseLong(lines.get(0).strip())).filter(ProcessHandle::isAlive)
                : Optional.empty();
        return new LeftOverServer(pidFile, lines, process);
    }

    /** @throws ServerUnusable if it does not stop */
    void stop(ServerCommands commands) throws IOException, InterruptedException {
        if (process.isEmpty()) {
            return;
        }
        if (!isServer(process.get().info())) {
            disown();
            return;
        }
        boolean stopped = commands.run(
                "pg_ctl", List.of("-D", pidFile.getParent().toString(), "-m", "fast", "-w", "-t", "60", "stop"));
        if (!stopped && process.get().isAlive()) {
            throw commands.failed("pg_ctl");
        }
    }

    /**
     * The number belongs to another program, which must not be signalled and would keep the server from starting. The
     * file stays, as by its other lines the new server sees whether workers of the old one are still about.
     */
    private void disown() throws IOException {
        Files.write(
                pidFile,
                Stream.concat(Stream.of(NOBODY), lines.stream().skip(1)).toList());
    }

    /** Told by its name or, where the system hides that, by the second at which it was started. */
    private boolean isServer(ProcessHandle.Info info) {
        long started = Long.parseLong(lines.get(LINE_OF_START).strip());
        return info.command()
                .or(info::commandLine)
                .map(name -> name.contains("postgres"))
                .orElseGet(() -> info.startInstant()
                        .map(Instant::getEpochSecond)
                        .filter(second -> Math.abs(second - started) <= 10)
                        .isPresent());
    }
}
