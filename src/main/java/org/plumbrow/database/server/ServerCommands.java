package org.plumbrow.database.server;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * Runs the server's programs ({@code initdb}, {@code pg_ctl}); all they print goes to the log in the data folder.
 *
 * @param binaries folder that holds {@code bin}
 */
record ServerCommands(DataFolder folder, Path binaries, ServerAccount account) {

    private static final Duration LIMIT = Duration.ofSeconds(120);
    private static final int LINES_SHOWN = 12;

    /** @return whether the program ended well */
    boolean run(String program, List<String> arguments) throws IOException, InterruptedException {
        String suffix = ServerAccount.isWindows() ? ".exe" : "";
        List<String> command = new ArrayList<>();
        command.add(binaries.resolve("bin").resolve(program + suffix).toString());
        command.addAll(arguments);
        // Output goes to a file and input comes from nowhere: the server would inherit and keep a pipe.
        ProcessBuilder builder = new ProcessBuilder(account.command(command))
                .directory(folder.root().toFile())
                .redirectErrorStream(true)
                .redirectInput(ProcessBuilder.Redirect.from(new File(ServerAccount.isWindows() ? "NUL" : "/dev/null")))
                .redirectOutput(
                        ProcessBuilder.Redirect.appendTo(folder.serverLog().toFile()));
        builder.environment().keySet().removeIf(name -> name.startsWith("PG"));
        Process process = builder.start();
        if (!process.waitFor(LIMIT.toSeconds(), TimeUnit.SECONDS)) {
            process.destroyForcibly();
            return false;
        }
        return process.exitValue() == 0;
    }

    /** @throws ServerUnusable with the last lines of the log if the program fails */
    void must(String program, List<String> arguments) throws IOException, InterruptedException {
        if (!run(program, arguments)) {
            throw failed(program);
        }
    }

    ServerUnusable failed(String program) throws IOException {
        return new ServerUnusable(
                "The database on this machine did not start (" + program + " failed). Its last words:\n" + lastWords(),
                "Read " + folder.serverLog()
                        + ". If the data folder cannot be kept, stop everything, move it away and start again.");
    }

    boolean lastWordsContain(List<String> any) throws IOException {
        String words = lastWords();
        return any.stream().anyMatch(words::contains);
    }

    private String lastWords() throws IOException {
        List<String> lines = new String(Files.readAllBytes(folder.serverLog()), StandardCharsets.UTF_8)
                .lines()
                .toList();
        return String.join("\n", lines.subList(Math.max(0, lines.size() - LINES_SHOWN), lines.size()));
    }
}
