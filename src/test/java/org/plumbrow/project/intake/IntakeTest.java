package org.plumbrow.project.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.database.BackgroundRuns;
import org.plumbrow.database.Run;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import org.springframework.transaction.support.TransactionTemplate;

@PlumbrowTest
class IntakeTest {

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    MockMvcTester mvc;

    @Autowired
    BackgroundRuns runs;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TransactionTemplate transaction;

    private TestBranch branch;

    @BeforeEach
    void aBranch() {
        branch = world.branch();
    }

    private MvcTestResult bring(byte[] bytes) {
        return mvc.post()
                .uri("/projects/intake")
                .multipart()
                .file(new MockMultipartFile("file", "jobs.csv", "text/csv", bytes))
                .with(world.signedIn(branch.manager()))
                .with(csrf())
                .exchange();
    }

    private String brought(byte[] bytes) {
        MvcTestResult answer = bring(bytes);
        assertThat(answer).hasStatus(302);
        return String.valueOf(answer.getResponse().getRedirectedUrl());
    }

    private MvcTestResult page(String address) {
        return pages.get(branch.manager(), address);
    }

    private Run takenIn(String address) {
        assertThat(mvc.post()
                        .uri(address + "/take-in")
                        .with(world.signedIn(branch.manager()))
                        .with(csrf()))
                .hasStatus(302);
        UUID intake = UUID.fromString(address.substring(address.lastIndexOf('/') + 1));
        Instant patience = Instant.now().plus(Duration.ofSeconds(90));
        while (Instant.now().isBefore(patience)) {
            Run run = world.as(
                    branch.manager(),
                    () -> runs.latest(Intakes.RUN_KIND, branch.id(), intake).orElseThrow());
            if (run.isOver()) {
                return run;
            }
            java.util.concurrent.locks.LockSupport.parkNanos(50_000_000);
        }
        throw new AssertionError("the file was not taken in within 90 s");
    }

    private List<String> projects() {
        return world.as(
                branch.manager(),
                () -> transaction.execute(status -> jdbc.sql(
                                "select name || ' ' || coalesce(stage, 'new') from project where branch_id = ? order by name")
                        .param(branch.id())
                        .query(String.class)
                        .list()));
    }

    @Test
    void theGoodRowsComeInAsOneAndTheOthersAreGivenBackWithTheirSentence() throws IOException {
        String address =
                brought("reference,pto,size kW\nB1,3-Feb-20,5\nB2,,6\n=B3,soon,7\n".getBytes(StandardCharsets.UTF_8));

        assertThat(page(address))
                .hasStatus(200)
                .bodyText()
                .contains("2 rows can come in, 1 are left out, 0 are here already")
                .contains("Line 4: Permission to operate, date: “soon” is no date.");
        assertThat(projects()).isEmpty();

        assertThat(takenIn(address).state()).isEqualTo(Run.State.DONE);
        assertThat(projects()).containsExactly("B1 COMMISSIONED", "B2 new");
        assertThat(page(address + "/left-out.csv").getResponse().getContentAsString(StandardCharsets.UTF_8))
                .contains("'=B3,soon,7,\"Line 4:");
    }

    @Test
    void bringingTheFileAgainMakesNoDoubles() {
        byte[] file = "reference,size kW\nC1,5\nC2,6\n".getBytes(StandardCharsets.UTF_8);
        takenIn(brought(file));
        String again = brought(file);

        assertThat(page(again)).bodyText().contains("0 rows can come in, 0 are left out, 2 are here already");
        takenIn(again);
        assertThat(projects()).hasSize(2);
    }

    @Test
    void aFileThatIsNoTableSaysWhatToDoAtItsField() {
        assertThat(bring("just words".getBytes(StandardCharsets.UTF_8)))
                .hasStatus(422)
                .bodyText()
                .contains("id=\"file-wrong\"")
                .contains("No heading was found");
        assertThat(bring(new byte[0])).hasStatus(422).bodyText().contains("The file is empty");
    }

    @Test
    void otherChoicesReadTheFileAnewAndAnOlderPageDoesNotOverwriteThem() {
        String address = brought("what,day\nA5,3/4/27\n".getBytes(StandardCharsets.UTF_8));

        assertThat(choose(address, 0, "0")).hasStatus(302);
        assertThat(page(address)).bodyText().contains("1 rows can come in");
        assertThat(choose(address, 0, "-1")).hasStatus(302);
        assertThat(page(address)).bodyText().contains("1 rows can come in");
    }

    private MvcTestResult choose(String address, int version, String nameColumn) {
        return pages.post(branch.manager(), address, "version", String.valueOf(version), "column.NAME", nameColumn);
    }

    /** 220 real systems of a public data set; it stays outside the project. */
    @Test
    void aRealFileComesInWithAllItsRowsOrASentenceForEach() throws IOException {
        Path file = Path.of(System.getProperty("plumbrow.reference", "../shared/reference"), "systems", "systems.csv");
        Assumptions.assumeTrue(Files.exists(file), "the public reference files are not here: " + file);

        String address = brought(Files.readAllBytes(file));
        assertThat(page(address)).bodyText().contains("220 rows can come in, 0 are left out, 0 are here already");
        assertThat(takenIn(address).outcome()).startsWith("220 projects opened, 0 rows left out");
        assertThat(projects()).hasSize(220);
        assertThat(projects().stream().filter(each -> each.endsWith(" COMMISSIONED")))
                .hasSize(215);
        assertThat(projects().stream().filter(each -> each.endsWith(" new"))).hasSize(5);
    }
}
