package org.plumbrow.design.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.plumbrow.database.BranchWall;
import org.plumbrow.demo.LoadedDemo;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

/** The form of a large farm's strings comes through the real server whole: its count of fields is the server's limit. */
@LoadedDemo
class ManyRowsTest {

    private static final int STRINGS = 1_600;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TransactionTemplate transaction;

    @Value("${local.server.port}")
    int port;

    private final HttpClient http =
            HttpClient.newBuilder().cookieHandler(new CookieManager()).build();

    private HttpResponse<String> send(HttpRequest.Builder request) throws Exception {
        return http.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    private HttpRequest.Builder at(String path) {
        return HttpRequest.newBuilder(URI.create("http://localhost:" + port + path));
    }

    private HttpResponse<String> post(String path, Map<String, String> fields) throws Exception {
        Document page = Jsoup.parse(send(at(path).GET()).body());
        fields.put("_csrf", page.select("form[method=post] input[name=_csrf]").val());
        String body = fields.entrySet().stream()
                .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
                .collect(Collectors.joining("&"));
        return send(at(path).header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(body)));
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    @Test
    void theLastOfManyRowsIsRead() throws Exception {
        String project = BranchWall.everywhere(
                () -> transaction.execute(status -> jdbc.sql("select cast(p.id as text) from design d"
                                + " join project p on p.id = d.project_id order by p.number limit 1")
                        .query(String.class)
                        .single()));
        post(
                "/sign-in",
                new LinkedHashMap<>(Map.of("email", "dov@quillback.example", "password", LoadedDemo.PASSWORD)));
        Map<String, String> fields = new LinkedHashMap<>(Map.of("sent[version]", "0"));
        for (int at = 0; at < STRINGS; at++) {
            String row = "rows[" + at + "].cells[";
            fields.put(row + "mark]", "1.1." + at);
            fields.put(row + "array]", "A1");
            fields.put(row + "inverter]", "INV 1");
            fields.put(row + "input]", "1");
            fields.put(row + "modules]", at == STRINGS - 1 ? "eighteen" : "18");
            fields.put(row + "firstModule]", "1");
            fields.put(row + "combiner]", "");
        }
        HttpResponse<String> answer = post("/projects/" + project + "/design/part/strings", fields);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .contains("value=\"1.1." + (STRINGS - 1) + "\"")
                .contains("value=\"eighteen\"")
                .contains("Write the modules in series as a whole number from 1 to 60 modules");
    }
}
