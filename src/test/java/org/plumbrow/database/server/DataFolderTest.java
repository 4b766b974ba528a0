package org.plumbrow.database.server;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DataFolderTest {

    @TempDir
    Path folder;

    @Test
    void oneInstanceHoldsTheFolderAtATime() {
        try (DataFolder held = DataFolder.take(folder)) {
            assertThat(held.root()).isEqualTo(folder.toAbsolutePath());
            assertThatThrownBy(() -> DataFolder.take(folder))
                    .isInstanceOf(ServerUnusable.class)
                    .hasMessage("The data folder " + folder + " is in use by another running instance (process "
                            + ProcessHandle.current().pid() + ").")
                    .extracting("remedy")
                    .asString()
                    .contains("PLUMBROW_DATA_DIR");
        }
        DataFolder.take(folder).close();
    }

    @Test
    void theSecretIsKeptAndReadableByItsOwnerOnly() throws IOException {
        String secret;
        try (DataFolder held = DataFolder.take(folder)) {
            secret = held.secret();
            assertThat(secret).hasSize(32);
        }
        try (DataFolder heldAgain = DataFolder.take(folder)) {
            assertThat(heldAgain.secret()).isEqualTo(secret);
        }
        assumeThat(Files.getFileStore(folder).supportsFileAttributeView("posix"))
                .isTrue();
        assertThat(Files.getPosixFilePermissions(folder.resolve("postgres.secret")))
                .isEqualTo(PosixFilePermissions.fromString("rw-------"));
    }

    @ParameterizedTest
    @CsvSource({
        "Linux, amd64, /postgres-linux-x86_64.txz",
        "Linux, aarch64, /postgres-linux-arm_64.txz",
        "Mac OS X, x86_64, /postgres-darwin-x86_64.txz",
        "Mac OS X, aarch64, /postgres-darwin-arm_64.txz",
        "Windows 11, amd64, /postgres-windows-x86_64.txz"
    })
    void eachPlatformHasItsServer(String os, String arch, String resource) {
        assertThat(ServerBinaries.resourceFor(os, arch)).isEqualTo(resource);
    }

    @Test
    void theStartTellsWhyItFailedInOneParagraph() {
        ServerUnusable cause = new ServerUnusable("The data folder is in use.", "Stop the other instance.");
        var analysis = new ServerUnusableAnalyzer().analyze(new IllegalStateException("bean", cause));
        assertThat(analysis.getDescription()).isEqualTo("The data folder is in use.");
        assertThat(analysis.getAction()).isEqualTo("Stop the other instance.");
    }

    @Test
    void aPasswordInAnAddressIsNotPrinted() {
        assertThat(WhereTheDataAre.withoutOptions("jdbc:postgresql://db/plumbrow?password=secret"))
                .isEqualTo("jdbc:postgresql://db/plumbrow");
    }
}
