package org.plumbrow.database;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import org.plumbrow.PlumbrowApplication;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.core.env.Environment;

/** A second application on the database of the first, listening on a port of its own. */
record AnotherNode(ConfigurableApplicationContext context) implements AutoCloseable {

    static AnotherNode beside(Environment first) {
        return new AnotherNode(new SpringApplicationBuilder(PlumbrowApplication.class)
                .run(settings(first).toArray(String[]::new)));
    }

    /** @return the settings of a node that shares the first one's database */
    static List<String> settings(Environment first) {
        List<String> settings = new ArrayList<>(List.of(
                "--server.port=0",
                "--server.address=127.0.0.1",
                "--plumbrow.demo=false",
                "--spring.main.banner-mode=off",
                "--spring.datasource.hikari.maximum-pool-size=6"));
        for (String name :
                List.of("spring.datasource.url", "spring.datasource.username", "spring.datasource.password")) {
            settings.add("--" + name + "=" + first.getRequiredProperty(name));
        }
        return settings;
    }

    HttpResponse<String> get(String path, String cookie) throws IOException, InterruptedException {
        URI address = URI.create(
                "http://127.0.0.1:" + context.getEnvironment().getRequiredProperty("local.server.port") + path);
        return HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(address).header("Cookie", cookie).build(),
                        HttpResponse.BodyHandlers.ofString());
    }

    @Override
    public void close() {
        context.close();
    }
}
