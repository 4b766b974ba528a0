package org.plumbrow.account.firm;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestMethodOrder;
import org.plumbrow.PlumbrowApplication;
import org.plumbrow.TestDatabase;
import org.plumbrow.account.person.CodesOfAPhone;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.web.server.context.WebServerApplicationContext;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * A new installation from its first page on, on two real nodes with one database: so what is told here is one story, in
 * this order.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class FirstRunTest {

    private static final String PASSWORD = "grommet lantern quarry fig";

    private final List<ConfigurableApplicationContext> nodes = new ArrayList<>();
    private final CookieManager cookies = new CookieManager();
    private final HttpClient browser =
            HttpClient.newBuilder().cookieHandler(cookies).build();
    private HttpResponse<String> last;

    @BeforeAll
    void startTwoNodes() {
        TestDatabase database = TestDatabase.copy();
        List<String> settings = new ArrayList<>(database.properties());
        settings.addAll(
                List.of("server.port=0", "plumbrow.demo=false", "spring.datasource.hikari.maximum-pool-size=4"));
        for (int node = 0; node < 2; node++) {
            nodes.add(new SpringApplicationBuilder(PlumbrowApplication.class)
                    .properties(settings.toArray(String[]::new))
                    .run(settings.stream().map(setting -> "--" + setting).toArray(String[]::new)));
        }
    }

    @AfterAll
    void stop() {
        nodes.forEach(ConfigurableApplicationContext::close);
    }

    @Test
    @Order(1)
    void everyPageLeadsToTheFirstRunUntilItIsDone() throws Exception {
        for (String page : List.of("/", "/sign-in", "/projects", "/you")) {
            get(0, page);
            assertThat(last.statusCode()).as(page).isEqualTo(302);
            assertThat(last.headers().firstValue("Location"))
                    .hasValueSatisfying(to -> assertThat(to).endsWith("/first-run"));
        }
        get(0, "/plumbrow.css");
        assertThat(last.statusCode()).isEqualTo(200);
    }

    @Test
    @Order(2)
    void withoutTheRightCodeNothingIsFoundedAndWhatWasTypedStays() throws Exception {
        get(0, "/first-run");
        submit(0, "/first-run", founding("AAAAA-BBBBB"));
        assertThat(last.statusCode()).isEqualTo(422);
        assertThat(page().selectFirst("#code-wrong").text())
                .isEqualTo("This is not the code of the log's last start. Look once more.");
        assertThat(page().selectFirst("input[name=firm]").val()).isEqualTo("Reedmace Solar");
    }

    @Test
    @Order(3)
    void afterFiveMissesEvenTheRightCodeIsDead() throws Exception {
        String code = firstRun(0).newCode();
        for (int miss = 0; miss < 5; miss++) {
            get(0, "/first-run");
            submit(0, "/first-run", founding("AAAAA-BBBBB"));
        }
        submit(0, "/first-run", founding(code));
        assertThat(last.statusCode()).isEqualTo(422);
        assertThat(page().selectFirst("#code-wrong").text()).isEqualTo(FirstRun.DEAD);
    }

    @Test
    @Order(4)
    void aCodeOlderThanHalfAnHourIsDead() throws Exception {
        String code = firstRun(0).newCode();
        jdbc(0).sql("update first_run_code set made_at = made_at - interval '30 minutes 1 second'")
                .update();
        get(0, "/first-run");
        submit(0, "/first-run", founding(code));
        assertThat(page().selectFirst("#code-wrong").text()).isEqualTo(FirstRun.DEAD);
    }

    @Test
    @Order(5)
    void theRightCodeWithAWeakPasswordMayBeUsedAgain() throws Exception {
        String code = firstRun(0).newCode();
        for (int i = 0; i < 6; i++) {
            get(0, "/first-run");
            Map<String, String> fields = founding(code);
            fields.put("password", "short");
            submit(0, "/first-run", fields);
            assertThat(page().selectFirst("#password-wrong")).isNotNull();
        }
        submit(0, "/first-run", founding(code.toLowerCase().replace("-", " ")));
        assertThat(last.statusCode()).isEqualTo(302);
        assertThat(last.headers().firstValue("Location"))
                .hasValueSatisfying(to -> assertThat(to).endsWith("/sign-in?welcome"));
    }

    @Test
    @Order(6)
    void theOwnerSignsInOnOneNodeAndIsKnownOnTheOther() throws Exception {
        get(0, "/sign-in");
        submit(0, "/sign-in", Map.of("email", "Olwen@reedmace.example", "password", PASSWORD));
        String secret = page().selectFirst("input[name=secret]").val();
        submit(0, "/sign-in/set-up", Map.of("code", CodesOfAPhone.code(secret, Instant.now())));
        assertThat(page().selectFirst("h1").text()).isEqualTo("Write these ten codes down now");
        get(1, "/you");
        assertThat(page().selectFirst("h1").text()).isEqualTo("Olwen, firm owner in Quillback Valley");
    }

    @Test
    @Order(7)
    void whatIsSignedOutEverywhereIsSignedOutOnEachNode() throws Exception {
        get(1, "/you");
        submit(1, "/you/sign-out-everywhere", Map.of());
        for (int node = 0; node < 2; node++) {
            get(node, "/you");
            assertThat(last.statusCode()).isEqualTo(302);
        }
    }

    @Test
    @Order(8)
    void theFirstRunIsOverOnBothNodes() throws Exception {
        for (int node = 0; node < 2; node++) {
            get(node, "/first-run");
            assertThat(last.headers().firstValue("Location"))
                    .hasValueSatisfying(to -> assertThat(to).doesNotContain("first-run"));
            get(node, "/sign-in");
            assertThat(last.statusCode()).isEqualTo(200);
        }
        assertThat(jdbc(0).sql("select count(*) from first_run_code")
                        .query(Long.class)
                        .single())
                .isZero();
    }

    @Test
    @Order(9)
    void theCookieIsOutOfReachOfScriptsAndSecureWhenTheRequestCameByHttps() throws Exception {
        HttpClient stranger = HttpClient.newHttpClient();
        HttpRequest.Builder request = HttpRequest.newBuilder(address(0, "/sign-in"));
        String plain = stranger.send(request.build(), HttpResponse.BodyHandlers.ofString())
                .headers()
                .firstValue("Set-Cookie")
                .orElseThrow();
        assertThat(plain)
                .startsWith("SESSION=")
                .contains("HttpOnly")
                .contains("SameSite=Lax")
                .doesNotContain("Secure");
        var https = stranger.send(
                request.header("X-Forwarded-Proto", "https").build(), HttpResponse.BodyHandlers.ofString());
        assertThat(https.headers().firstValue("Set-Cookie").orElseThrow())
                .contains("Secure")
                .contains("HttpOnly");
        assertThat(https.headers().firstValue("Strict-Transport-Security")).isPresent();
    }

    private static Map<String, String> founding(String code) {
        return new HashMap<>(Map.of(
                "code", code,
                "firm", "Reedmace Solar",
                "branchName", "Quillback Valley",
                "branchCode", "qv",
                "zone", "America/New_York",
                "name", "Olwen",
                "email", "olwen@Reedmace.example",
                "password", PASSWORD,
                "again", PASSWORD));
    }

    private FirstRun firstRun(int node) {
        return nodes.get(node).getBean(FirstRun.class);
    }

    private JdbcClient jdbc(int node) {
        return nodes.get(node).getBean(JdbcClient.class);
    }

    private void get(int node, String path) throws IOException, InterruptedException {
        last = browser.send(HttpRequest.newBuilder(address(node, path)).build(), HttpResponse.BodyHandlers.ofString());
    }

    /** Sends the hidden fields of the last page's form with these. */
    private void submit(int node, String path, Map<String, String> filledIn) throws IOException, InterruptedException {
        Map<String, String> fields = new HashMap<>();
        page().select("form[action='" + path + "'] input[type=hidden]")
                .forEach(field -> fields.put(field.attr("name"), field.val()));
        fields.putAll(filledIn);
        String body = fields.entrySet().stream()
                .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
                .collect(Collectors.joining("&"));
        last = browser.send(
                HttpRequest.newBuilder(address(node, path))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(body))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    private Document page() {
        return Jsoup.parse(last.body());
    }

    private URI address(int node, String path) {
        int port =
                ((WebServerApplicationContext) nodes.get(node)).getWebServer().getPort();
        return URI.create("http://localhost:" + port + path);
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
