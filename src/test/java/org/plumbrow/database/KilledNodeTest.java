package org.plumbrow.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.github.kagkarlsson.scheduler.Scheduler;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.plumbrow.PlumbrowApplication;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestWorld;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.core.env.Environment;
import org.springframework.transaction.support.TransactionTemplate;

/** Kill -9 of a node in the middle of a background run. Slow: run with -Dplumbrow.slow=true. */
@Tag("slow")
@EnabledIfSystemProperty(
        named = "plumbrow.slow",
        matches = "true",
        disabledReason = "slow; -Dplumbrow.slow=true runs it")
@PlumbrowTest
class KilledNodeTest {

    private static final Duration SOON = Duration.ofMinutes(3);

    @TempDir
    Path folder;

    @Autowired
    BackgroundRuns runs;

    @Autowired
    Scheduler scheduler;

    @Autowired
    TransactionTemplate transaction;

    @Autowired
    Environment environment;

    @Autowired
    TestWorld world;

    @Test
    void theRunOfAKilledNodeIsFinishedByAnother() throws IOException {
        UUID branch = world.branch().id();
        scheduler.pause();
        Process victim = startVictim();
        try {
            UUID id = BranchWall.within(
                    branch, () -> transaction.execute(status -> runs.start(FatalWork.KIND, branch, null, "Ines")));
            await().atMost(SOON).until(() -> run(branch, id).words().equals("Halfway"));
            victim.destroyForcibly();
            scheduler.resume();
            await().atMost(SOON).until(() -> run(branch, id).isOver());
            assertThat(run(branch, id).outcome()).isEqualTo("Done by the one that lives.");
            assertThat(run(branch, id).tries()).isEqualTo(2);
        } finally {
            victim.destroyForcibly();
            scheduler.resume();
        }
    }

    private Run run(UUID branch, UUID id) {
        return BranchWall.within(branch, () -> runs.find(id)).orElseThrow();
    }

    private Process startVictim() throws IOException {
        List<String> command = new ArrayList<>(List.of(
                ProcessHandle.current().info().command().orElseThrow(),
                "-Xmx512m",
                "-D" + FatalWork.VICTIM + "=true",
                "-cp",
                System.getProperty("java.class.path"),
                PlumbrowApplication.class.getName()));
        command.addAll(AnotherNode.settings(environment));
        File output = folder.resolve("victim.log").toFile();
        return new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(output)
                .start();
    }
}
