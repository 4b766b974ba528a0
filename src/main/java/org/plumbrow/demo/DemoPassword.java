package org.plumbrow.demo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.util.List;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/**
 * The one password of the demo's people: made at random by each installation, kept for its owner's eyes beside the
 * database's own secret, printed at each start. {@code plumbrow.demo.password} gives another one for the first start.
 */
@Component
@WithDemo
class DemoPassword {

    private static final List<String> WORDS = List.of(
            "alder", "barley", "bridge", "candle", "copper", "creek", "ember", "fallow", "fiddle", "gravel", "harbor",
            "hazel", "ladder", "lantern", "meadow", "mitten", "orchard", "paddle", "pepper", "pocket", "quarry",
            "ribbon", "saddle", "shovel", "sparrow", "thistle", "timber", "velvet", "walnut", "willow");

    private final Path file;
    private final String given;

    DemoPassword(@Value("${plumbrow.data-dir}") Path dataFolder, @Value("${plumbrow.demo.password:}") String given) {
        this.file = dataFolder.toAbsolutePath().normalize().resolve("demo.secret");
        this.given = given;
    }

    /** Makes the password and keeps it. */
    String make() {
        String password = given.isBlank() ? random() : given;
        keep(password);
        return password;
    }

    /** The kept password; a dash where it is not kept here: another node made it, or somebody removed the file. */
    String kept() {
        try {
            return Files.exists(file) ? Files.readString(file).strip() : "–";
        } catch (IOException unreadable) {
            return "–";
        }
    }

    private static String random() {
        SecureRandom random = new SecureRandom();
        StringBuilder password = new StringBuilder();
        for (int i = 0; i < 4; i++) {
            password.append(WORDS.get(random.nextInt(WORDS.size()))).append('-');
        }
        return password.append(10 + random.nextInt(90)).toString();
    }

    private void keep(String password) {
        try {
            Files.createDirectories(file.getParent());
            Files.deleteIfExists(file);
            if (Files.getFileStore(file.getParent()).supportsFileAttributeView("posix")) {
                Files.createFile(
                        file, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
            }
            Files.writeString(file, password + "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
