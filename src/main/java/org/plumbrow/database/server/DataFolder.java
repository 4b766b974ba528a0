package org.plumbrow.database.server;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.util.Base64;
import org.jspecify.annotations.Nullable;

/** The folder that holds the database of this machine; held by one running instance at a time. */
final class DataFolder implements AutoCloseable {

    private final Path root;
    private final FileChannel lockFile;
    private final FileLock lock;

    private DataFolder(Path root, FileChannel lockFile, FileLock lock) {
        this.root = root;
        this.lockFile = lockFile;
        this.lock = lock;
    }

    /** @throws ServerUnusable if another instance holds the folder or it cannot be written */
    static DataFolder take(Path folder) {
        Path root = folder.toAbsolutePath().normalize();
        try {
            Files.createDirectories(root);
            Path lockPath = root.resolve("in-use.lock");
            FileChannel channel = FileChannel.open(lockPath, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            FileLock lock = tryLock(channel);
            if (lock == null) {
                channel.close();
                throw new ServerUnusable(
                        "The data folder " + root + " is in use by another running instance" + holder(lockPath) + ".",
                        "Stop the other instance, or give this one a folder of its own with PLUMBROW_DATA_DIR.");
            }
            channel.truncate(0);
            channel.write(
                    ByteBuffer.wrap(Long.toString(ProcessHandle.current().pid()).getBytes(StandardCharsets.US_ASCII)));
            return new DataFolder(root, channel, lock);
        } catch (AccessDeniedException denied) {
            throw new ServerUnusable(
                    "The data folder " + root + " cannot be written by the user who starts the program.",
                    "Give it to that user, or name another folder with PLUMBROW_DATA_DIR.",
                    denied);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static @Nullable FileLock tryLock(FileChannel channel) throws IOException {
        try {
            return channel.tryLock();
        } catch (OverlappingFileLockException heldByThisProcess) {
            return null;
        }
    }

    private static String holder(Path lockPath) {
        try {
            String pid = Files.readString(lockPath).strip();
            return pid.isEmpty() ? "" : " (process " + pid + ")";
        } catch (IOException unreadableWhileLocked) {
            return "";
        }
    }

    Path root() {
        return root;
    }

    Path cluster() {
        return root.resolve("postgres");
    }

    /** Where a new cluster is made; it gets its real name only when it is complete. */
    Path unfinishedCluster() {
        return root.resolve("postgres.new");
    }

    Path serverLog() {
        return root.resolve("server.log");
    }

    Path secretFile() {
        return root.resolve("postgres.secret");
    }

    /** @return the password of the server's own superuser; made at the first start, readable by its owner only */
    String secret() throws IOException {
        Path file = secretFile();
        if (Files.notExists(file)) {
            keepPrivately(file, randomWord());
        }
        return Files.readString(file).strip();
    }

    static String randomWord() {
        byte[] random = new byte[24];
        new SecureRandom().nextBytes(random);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(random);
    }

    private static void keepPrivately(Path file, String word) throws IOException {
        Path unfinished = file.resolveSibling(file.getFileName() + ".new");
        Files.deleteIfExists(unfinished);
        if (Files.getFileStore(file.getParent()).supportsFileAttributeView("posix")) {
            Files.createFile(
                    unfinished, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
        }
        Files.writeString(unfinished, word + "\n");
        Files.move(unfinished, file);
    }

    @Override
    public void close() {
        try {
            lock.release();
            lockFile.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
