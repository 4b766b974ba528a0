package org.plumbrow.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.plumbrow.database.BranchWall;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.transaction.support.TransactionTemplate;

/** The demo branch as it stands after a first start. */
@LoadedDemo
class DemoTest {

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TransactionTemplate transaction;

    @Autowired
    MockMvcTester mvc;

    private <T> T seen(Supplier<T> work) {
        return BranchWall.everywhere(() -> transaction.execute(status -> work.get()));
    }

    private List<String> texts(String sql) {
        return seen(() -> jdbc.sql(sql).query(String.class).list());
    }

    @Autowired
    DemoSignIn signIn;

    @Test
    void theConsoleSaysWhoCanBeSignedInAsAndWithWhat() {
        assertThat(String.join(" ", signIn.lines()))
                .contains(
                        "maren@quillback.example (firm owner)",
                        "ines@quillback.example (branch manager)",
                        "tamsin@quillback.example (project manager)",
                        "odo@quillback.example (designer)",
                        "jory@quillback.example (crew lead)",
                        "Their password: " + LoadedDemo.PASSWORD);
    }

    @Test
    void aboutFortyProjectsStandInEveryStage() {
        // Other tests on the shared demo bring in projects of their own.
        List<String> names =
                SeedRow.of("projects.csv").stream().map(row -> row.text("name")).toList();
        assertThat(names).hasSizeBetween(38, 44).doesNotHaveDuplicates();
        assertThat(texts("select name from project")).containsAll(names);
        assertThat(texts("select distinct coalesce(stage, 'new') from project"))
                .containsExactlyInAnyOrder(
                        "new", "SIGNED", "SURVEYED", "DESIGNED", "PERMITTED", "INSTALLED", "CUTOVER", "COMMISSIONED");
        assertThat(texts("select distinct standing from project"))
                .containsExactlyInAnyOrder("OPEN", "ON_HOLD", "CALLED_OFF");
    }

    @Test
    void eachStageThatWasReachedHasItsEvidenceAndItsLines() {
        assertThat(texts("""
                select p.number from project p where p.stage is not null and not exists
                  (select 1 from evidence e where e.project_id = p.id and e.kind = 'SIGNATURE')
                """)).isEmpty();
        assertThat(texts("""
                select p.number from project p where p.stage is not null and not exists
                  (select 1 from project_journal j where j.project_id = p.id and j.kind = 'gate.passed')
                """)).isEmpty();
    }

    /** Other tests on the shared demo write logs in branches of their own. */
    private static final String OF_THE_DEMO = "branch_id in (select id from branch where name = 'Quillback Valley')";

    @Test
    void everyReadingOfADayLogStandsInASeedFile() {
        Set<String> written = SeedRow.of("outages.csv").stream()
                .filter(row -> row.has("log"))
                .map(row -> row.text("log"))
                .distinct()
                .flatMap(file -> SeedRow.of("cutover-logs/" + file).stream())
                .flatMap(row -> row.parts("readings", ";").stream().map(part -> row.text("step") + " " + part))
                .collect(Collectors.toSet());
        List<String> kept = texts(
                "select distinct step || ' ' || quantity || '=' || value from day_log_entry where kind = 'READING' and "
                        + OF_THE_DEMO);
        assertThat(kept).isNotEmpty().isSubsetOf(written);
    }

    @Test
    void everyOutageOfTheSeedWasConfirmedAndAgreed() {
        assertThat(texts("""
                select utility_confirmation from outage_window where customer_answer = 'AGREED' and utility_told_how is not null
                   and\s""" + OF_THE_DEMO))
                .containsExactlyInAnyOrderElementsOf(SeedRow.of("outages.csv").stream()
                        .map(row -> row.text("utility_number"))
                        .toList());
        assertThat(texts("select outcome from day_log where " + OF_THE_DEMO))
                .hasSize(8)
                .containsOnly("DONE");
    }

    @Test
    void nothingOfTheStoryHappensAfterTheFirstStart() {
        assertThat(texts("select sentence from project_journal where at > now() + interval '1 minute'"))
                .isEmpty();
    }

    @Test
    void thePicturesSayThatTheyAreMadeUp() {
        assertThat(new String(DemoPictures.paper("Permit"), java.nio.charset.StandardCharsets.US_ASCII))
                .contains("Made up for the demo branch.");
    }
}
