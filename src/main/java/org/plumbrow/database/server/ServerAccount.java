package org.plumbrow.database.server;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * As whom the server runs. PostgreSQL refuses to run as root; started by root it runs in a user namespace of its own
 * or, where that is refused (most containers), as the user "nobody".
 *
 * @param prefix what stands before each command
 * @param owner the user id that must own the server's files; null leaves them alone
 */
record ServerAccount(List<String> prefix, @Nullable Integer owner) {

    private static final int ROOT = 0;
    private static final int NOBODY = 65534;
    static final List<String> NAMESPACE = List.of("unshare", "-U");
    private static final List<String> AS_NOBODY =
            List.of("setpriv", "--reuid=" + NOBODY, "--regid=" + NOBODY, "--clear-groups");

    /**
     * @param namespace command that gives a program a user namespace of its own
     * @throws ServerUnusable if root starts it and there is no way to run the server as somebody else
     */
    static ServerAccount choose(Path dataFolder, List<String> namespace) throws IOException, InterruptedException {
        if (isWindows() || !"0".equals(answer(List.of("id", "-u")))) {
            return new ServerAccount(List.of(), null);
        }
        String inNamespace = answer(with(namespace, List.of("id", "-u")));
        if (!inNamespace.isEmpty() && !inNamespace.equals("0")) {
            ServerAccount root = new ServerAccount(namespace, ROOT);
            root.own(dataFolder, false);
            return root;
        }
        ServerAccount nobody = new ServerAccount(AS_NOBODY, NOBODY);
        nobody.own(dataFolder, false);
        List<String> canWrite = List.of("sh", "-c", "test -w \"$0\" && echo yes", dataFolder.toString());
        if (!"yes".equals(answer(nobody.command(canWrite)))) {
            throw new ServerUnusable(
                    "PostgreSQL does not run as root, and the folder " + dataFolder
                            + " cannot be reached by another user.",
                    "Start as an ordinary user, or name a data folder with PLUMBROW_DATA_DIR whose parent folders"
                            + " everybody may enter.");
        }
        return nobody;
    }

    static boolean isWindows() {
        return System.getProperty("os.name").startsWith("Windows");
    }

    List<String> command(List<String> command) {
        return with(prefix, command);
    }

    /** Gives the path, and all below it, to the account that runs the server. */
    void own(Path path) throws IOException {
        own(path, true);
    }

    private void own(Path path, boolean allBelow) throws IOException {
        if (owner == null || Files.notExists(path)) {
            return;
        }
        boolean already = owner.equals(Files.getAttribute(path, "unix:uid", LinkOption.NOFOLLOW_LINKS));
        if (already) {
            return;
        }
        if (allBelow) {
            Files.walkFileTree(path, new Giver(owner));
        } else {
            give(path, owner);
        }
    }

    private static void give(Path path, int owner) throws IOException {
        Files.setAttribute(path, "unix:gid", owner, LinkOption.NOFOLLOW_LINKS);
        Files.setAttribute(path, "unix:uid", owner, LinkOption.NOFOLLOW_LINKS);
    }

    private static List<String> with(List<String> prefix, List<String> command) {
        return Stream.concat(prefix.stream(), command.stream()).toList();
    }

    /** @return what the command printed; nothing if it failed or is not there */
    private static String answer(List<String> command) throws InterruptedException {
        try {
            Process process = new ProcessBuilder(command)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
            return process.waitFor(10, TimeUnit.SECONDS) && process.exitValue() == 0 ? printed : "";
        } catch (IOException notThere) {
            return "";
        }
    }

    /** The folder is given last, so that a walk that broke off is begun again at the next start. */
    private static final class Giver extends SimpleFileVisitor<Path> {

        private final int owner;

        Giver(int owner) {
            this.owner = owner;
        }

        @Override
        public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
            give(file, owner);
            return FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult postVisitDirectory(Path folder, @Nullable IOException failure) throws IOException {
            give(folder, owner);
            return FileVisitResult.CONTINUE;
        }
    }
}
