package org.plumbrow.database.server;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Locale;
import org.apache.commons.compress.archivers.tar.TarArchiveEntry;
import org.apache.commons.compress.archivers.tar.TarArchiveInputStream;
import org.apache.commons.compress.compressors.xz.XZCompressorInputStream;
import org.jspecify.annotations.Nullable;
import org.springframework.util.FileSystemUtils;

/** The PostgreSQL server that came as a library, unpacked once per version beside the data. */
final class ServerBinaries {

    /** The major version of the binaries; a data folder of another one cannot be opened by them. */
    static final String MAJOR_VERSION = "17";

    private ServerBinaries() {}

    /** @return the folder that holds {@code bin}, {@code lib} and {@code share} */
    static Path unpack(Path dataFolder) throws IOException {
        String resource = resourceFor(System.getProperty("os.name"), System.getProperty("os.arch"));
        Path all = dataFolder.resolve("postgres-binaries");
        Path home = all.resolve(hash(resource));
        if (Files.notExists(home)) {
            Files.createDirectories(all);
            Path unfinished = Files.createDirectory(all.resolve("new-" + DataFolder.randomWord()));
            try (InputStream packed = open(resource)) {
                unpack(packed, unfinished);
                moveIntoPlace(unfinished, home);
            } finally {
                FileSystemUtils.deleteRecursively(unfinished);
            }
        }
        return home;
    }

    static String resourceFor(String osName, String osArch) {
        String os = osName.toLowerCase(Locale.ROOT);
        boolean arm = osArch.equals("aarch64") || osArch.equals("arm64");
        String name = os.startsWith("windows") ? "windows" : os.startsWith("mac") ? "darwin" : "linux";
        return "/postgres-" + name + (arm ? "-arm_64" : "-x86_64") + ".txz";
    }

    private static InputStream open(String resource) {
        @Nullable InputStream in = ServerBinaries.class.getResourceAsStream(resource);
        if (in == null) {
            throw new ServerUnusable(
                    "No PostgreSQL for this machine came with the program (" + resource + ").",
                    "Build with the Maven profile of this platform, or use a server of your own with"
                            + " SPRING_DATASOURCE_URL.");
        }
        return new BufferedInputStream(in);
    }

    private static String hash(String resource) throws IOException {
        try (InputStream in = open(resource)) {
            MessageDigest sha256 = MessageDigest.getInstance("SHA-256");
            new DigestInputStream(in, sha256).transferTo(OutputStream.nullOutputStream());
            return HexFormat.of().formatHex(sha256.digest(), 0, 8);
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }

    private static void unpack(InputStream packed, Path into) throws IOException {
        try (TarArchiveInputStream tar = new TarArchiveInputStream(new XZCompressorInputStream(packed))) {
            for (TarArchiveEntry entry = tar.getNextEntry(); entry != null; entry = tar.getNextEntry()) {
                Path target = into.resolve(entry.getName()).normalize();
                if (!target.startsWith(into)) {
                    throw new IOException("entry outside its folder: " + entry.getName());
                }
                write(entry, tar, target);
            }
        }
    }

    private static void write(TarArchiveEntry entry, InputStream content, Path target) throws IOException {
        if (entry.isDirectory()) {
            Files.createDirectories(target);
            return;
        }
        Files.createDirectories(target.getParent());
        if (entry.isSymbolicLink()) {
            Files.createSymbolicLink(target, Path.of(entry.getLinkName()));
        } else {
            Files.copy(content, target);
            if ((entry.getMode() & 0b001_000_000) != 0 && !target.toFile().setExecutable(true, false)) {
                throw new IOException("cannot make executable: " + target);
            }
        }
    }

    private static void moveIntoPlace(Path unfinished, Path home) throws IOException {
        try {
            Files.move(unfinished, home, StandardCopyOption.ATOMIC_MOVE);
        } catch (FileAlreadyExistsException | DirectoryNotEmptyException another) {
            // unpacked meanwhile by somebody else: theirs is as good
        }
    }
}
