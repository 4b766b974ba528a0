package org.plumbrow.cutover.daylog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.plumbrow.PlumbrowApplication;
import org.plumbrow.evidence.MadeUpPhoto;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Kill -9 of the server, and in every second round of its database too, while two phones send what they have kept. Each
 * phone then sends its whole batch again: what was acknowledged is there, and everything is there once.
 * Slow: run with -Dplumbrow.slow=true.
 */
@Tag("slow")
@EnabledIfSystemProperty(
        named = "plumbrow.slow",
        matches = "true",
        disabledReason = "slow; -Dplumbrow.slow=true runs it")
@Timeout(value = 12, unit = TimeUnit.MINUTES)
class KilledWhileSendingTest {

    private static final int ROUNDS = 4;
    private static final int TAPS_OF_A_PHONE = 30;
    private static final int PHOTO_EVERY = 3;
    private static final int ANSWERS_BEFORE_THE_KILL = 20;
    private static final int MOST_MS_UNTIL_THE_KILL = 25;
    private static final Duration SOON = Duration.ofMinutes(3);
    private static final byte[] PHOTO = MadeUpPhoto.plain();

    @TempDir
    Path folder;

    private final HttpClient http = HttpClient.newHttpClient();
    private final Set<UUID> acknowledged = ConcurrentHashMap.newKeySet();
    private final Random random = new Random(20261126);
    private Server server;
    private String[] world;

    /** One thing that a phone has kept; without words it is a photo. */
    private record Tap(UUID id, String words, Instant at) {}

    private record Server(Process process, String address) {}

    @AfterEach
    void stopWhatIsLeft() throws IOException {
        server.process().destroyForcibly();
        killDatabase();
    }

    @Test
    void everyAcknowledgedTapIsThereOnceWhateverWasKilled() throws Exception {
        server = start(ServerToKill.FIRST);
        List<Tap> all = new ArrayList<>();
        for (int round = 0; round < ROUNDS; round++) {
            List<List<Tap>> phones = List.of(batch(round, "a"), batch(round, "b"));
            phones.forEach(all::addAll);
            sendAndKill(phones, round % 2 == 1);
            Set<UUID> before = Set.copyOf(acknowledged);
            assertThat(before.size()).as("killed in the middle").isLessThan(all.size());
            server = start(ServerToKill.AGAIN);
            for (Tap tap : phones.stream().flatMap(List::stream).toList()) {
                String said = send(tap, token());
                if (before.contains(tap.id())) {
                    assertThat(said).as("acknowledged before the kill: %s", tap).isEqualTo("already");
                } else {
                    assertThat(said).isIn("stored", "already");
                }
            }
        }
        standsOnce(all);
    }

    private List<Tap> batch(int round, String phone) {
        return IntStream.range(0, TAPS_OF_A_PHONE)
                .mapToObj(number -> new Tap(
                        UUID.randomUUID(),
                        number % PHOTO_EVERY == 0 ? "" : "Note " + round + phone + number + ".",
                        Instant.now()))
                .toList();
    }

    /** Each phone sends one after the other and stops at the first that gets no answer, as the page does. */
    private void sendAndKill(List<List<Tap>> phones, boolean databaseToo) throws Exception {
        CountDownLatch answers = new CountDownLatch(ANSWERS_BEFORE_THE_KILL);
        ExecutorService senders = Executors.newFixedThreadPool(phones.size());
        try {
            Map<String, String> token = token();
            List<Future<?>> sending = new ArrayList<>();
            phones.forEach(batch -> sending.add(senders.submit(() -> sendUntilNoAnswer(batch, token, answers))));
            assertThat(answers.await(SOON.toMinutes(), TimeUnit.MINUTES)).isTrue();
            Thread.sleep(random.nextInt(MOST_MS_UNTIL_THE_KILL));
            server.process().destroyForcibly();
            if (databaseToo) {
                killDatabase();
            }
            for (Future<?> one : sending) {
                one.get();
            }
            assertThat(server.process().waitFor(SOON.toMinutes(), TimeUnit.MINUTES))
                    .isTrue();
        } finally {
            senders.shutdownNow();
        }
    }

    private Void sendUntilNoAnswer(List<Tap> batch, Map<String, String> token, CountDownLatch answers)
            throws InterruptedException {
        for (Tap tap : batch) {
            try {
                assertThat(send(tap, token)).isEqualTo("stored");
            } catch (IOException killed) {
                return null;
            }
            acknowledged.add(tap.id());
            answers.countDown();
        }
        return null;
    }

    /** As the page of the log asks before it sends. */
    private Map<String, String> token() throws IOException, InterruptedException {
        JsonNode here = JsonMapper.shared().readTree(get("/phone"));
        return Map.of(here.get("header").asString(), here.get("token").asString());
    }

    private String send(Tap tap, Map<String, String> token) throws IOException, InterruptedException {
        Map<String, String> fields = Map.of(
                "sending", tap.id().toString(),
                "entry", tap.id().toString(),
                "person", world[1],
                "written", tap.at().toString(),
                "sent", Instant.now().toString(),
                "text", tap.words());
        String border = "border-" + tap.id();
        HttpRequest.Builder request = to(log() + (tap.words().isEmpty() ? "/steps/1/photo" : "/wrong") + "/sending")
                .header("Content-Type", "multipart/form-data; boundary=" + border)
                .POST(HttpRequest.BodyPublishers.ofByteArrays(
                        parts(fields, border, tap.words().isEmpty())));
        token.forEach(request::header);
        HttpResponse<String> answer = http.send(request.build(), BodyHandlers.ofString());
        // A server that is going down may still say so: no answer of ours, so nothing was taken.
        if (answer.statusCode() >= 500) {
            throw new IOException("status " + answer.statusCode());
        }
        return JsonMapper.shared().readTree(answer.body()).get("said").asString();
    }

    private static List<byte[]> parts(Map<String, String> fields, String border, boolean photo) {
        List<byte[]> parts = new ArrayList<>();
        fields.forEach((name, value) -> parts.add(text(
                "--" + border + "\r\nContent-Disposition: form-data; name=\"" + name + "\"\r\n\r\n" + value + "\r\n")));
        if (photo) {
            parts.add(text("--" + border + "\r\nContent-Disposition: form-data; name=\"photo\"; filename=\"a.jpg\"\r\n"
                    + "Content-Type: image/jpeg\r\n\r\n"));
            parts.add(PHOTO);
            parts.add(text("\r\n"));
        }
        parts.add(text("--" + border + "--\r\n"));
        return parts;
    }

    private static byte[] text(String part) {
        return part.getBytes(StandardCharsets.UTF_8);
    }

    private void standsOnce(List<Tap> all) throws IOException, InterruptedException {
        Document page = Jsoup.parse(get(log()));
        String steps = page.select(".steps").text();
        List<Tap> notes = all.stream().filter(tap -> !tap.words().isEmpty()).toList();
        assertThat(notes).allSatisfy(tap -> assertThat(steps).containsOnlyOnce(tap.words()));
        assertThat(page.select(".steps a[href^=/evidence/]")).hasSize(all.size() - notes.size());
    }

    private String log() {
        return "/projects/" + world[0] + "/day-log";
    }

    private String get(String path) throws IOException, InterruptedException {
        HttpResponse<String> answer = http.send(to(path).build(), BodyHandlers.ofString());
        assertThat(answer.statusCode()).as(path).isEqualTo(200);
        return answer.body();
    }

    private HttpRequest.Builder to(String path) {
        return HttpRequest.newBuilder(URI.create(server.address() + path))
                .timeout(Duration.ofMinutes(1))
                .header("Cookie", "SESSION=" + world[2]);
    }

    private Server start(String which) throws IOException {
        Path output = Files.createTempFile(folder, "server", ".log");
        List<String> command = List.of(
                ProcessHandle.current().info().command().orElseThrow(),
                "-Xmx512m",
                "-cp",
                System.getProperty("java.class.path"),
                PlumbrowApplication.class.getName(),
                "--plumbrow.data-dir=" + folder.resolve("data"),
                "--plumbrow.demo=false",
                "--server.port=0",
                "--server.address=127.0.0.1",
                "--spring.main.banner-mode=off",
                "--" + ServerToKill.START + "=" + which);
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(output.toFile())
                .start();
        server = new Server(process, "");
        await().atMost(SOON).until(() -> !process.isAlive() || said(output, ServerToKill.LISTENS) != null);
        assertThat(process.isAlive()).as(Files.readString(output)).isTrue();
        if (which.equals(ServerToKill.FIRST)) {
            world = said(output, ServerToKill.WORLD).split(" ");
        }
        return new Server(process, "http://127.0.0.1:" + said(output, ServerToKill.LISTENS));
    }

    private static String said(Path output, String what) throws IOException {
        return Files.readString(output)
                .lines()
                .filter(line -> line.startsWith(what))
                .map(line -> line.substring(what.length()))
                .findFirst()
                .orElse(null);
    }

    private void killDatabase() throws IOException {
        Path pid = folder.resolve("data").resolve("postgres").resolve("postmaster.pid");
        if (Files.exists(pid)) {
            ProcessHandle.of(Long.parseLong(Files.readAllLines(pid).get(0).strip()))
                    .ifPresent(ProcessHandle::destroyForcibly);
        }
    }
}
