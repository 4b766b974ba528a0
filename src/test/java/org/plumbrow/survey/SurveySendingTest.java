package org.plumbrow.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.evidence.MadeUpPhoto;
import org.plumbrow.project.JournalReader;
import org.plumbrow.project.PhoneReply;
import org.plumbrow.project.PhoneSending;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import org.springframework.transaction.support.TransactionTemplate;

/** What a phone sends late, twice, at the same time, too late, or in another's name. */
@PlumbrowTest
class SurveySendingTest {

    private static final Map<String, String> GRAVEL = Map.of("lane", "gravel", "overhead", "none");

    @Autowired
    MockMvcTester mvc;

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    ProjectFixture projects;

    @Autowired
    Surveys surveys;

    @Autowired
    SurveySending sendings;

    @Autowired
    JournalReader journal;

    @Autowired
    TransactionTemplate transaction;

    @Autowired
    JdbcClient jdbc;

    private TestBranch branch;
    private UUID project;
    private int linesBefore;

    @BeforeEach
    void aHome() {
        branch = world.branch();
        project = projects.aHomeRoof().in(branch).build();
        linesBefore = lines();
    }

    private int lines() {
        return world.as(branch.manager(), () -> journal.newest(project, 50)).size();
    }

    private MvcTestResult send(Visitor who, UUID id, String part, long version, Map<String, String> typed) {
        return sendAs(who, who.personId().toString(), id.toString(), part, version, typed);
    }

    private MvcTestResult sendAs(
            Visitor who, String person, String id, String part, long version, Map<String, String> typed) {
        Map<String, String> fields = new HashMap<>(typed);
        fields.putAll(Map.of("sending", id, "person", person, "version", String.valueOf(version)));
        fields.put("written", "2027-03-01T13:14:00Z");
        return pages.post(who, "/projects/" + project + "/survey/" + part + "/sending", fields);
    }

    private String lane() {
        return world.as(branch.designer(), () -> surveys.facts(project))
                .access()
                .lane();
    }

    @Test
    void theSameSendingCountsOnceHoweverOftenItArrives() {
        UUID id = UUID.randomUUID();
        MvcTestResult first = send(branch.projectManager(), id, "access", 0, GRAVEL);
        assertThat(first).hasStatusOk().bodyJson().extractingPath("$.said").isEqualTo("stored");
        assertThat(first).bodyJson().extractingPath("$.next").isEqualTo("/projects/" + project + "/survey/loads");
        MvcTestResult again = send(branch.projectManager(), id, "access", 0, Map.of("lane", "something else"));
        assertThat(again).hasStatusOk().bodyJson().extractingPath("$.said").isEqualTo("already");
        assertThat(again).bodyJson().extractingPath("$.version").isEqualTo(1);
        assertThat(lane()).isEqualTo("gravel");
        assertThat(lines()).isEqualTo(linesBefore + 1);
    }

    @Test
    void theSameSendingTwiceAtTheSameMomentIsStoredOnce() {
        PhoneSending sending =
                new PhoneSending(UUID.randomUUID(), branch.projectManager().personId(), null);
        List<CompletableFuture<PhoneReply>> both = IntStream.range(0, 4)
                .mapToObj(i -> CompletableFuture.supplyAsync(() -> world.as(
                        branch.projectManager(),
                        () -> sendings.part(Optional.of(sending), project, SurveyPart.ACCESS, 0, GRAVEL))))
                .toList();
        List<PhoneReply> answers = both.stream().map(CompletableFuture::join).toList();
        assertThat(answers)
                .extracting(PhoneReply::said)
                .containsExactlyInAnyOrder("stored", "already", "already", "already");
        assertThat(lines()).isEqualTo(linesBefore + 1);
    }

    @Test
    void whoWasSlowerGetsTheirsBesideYoursAndTheIdMayComeAgain() {
        send(branch.manager(), UUID.randomUUID(), "access", 0, GRAVEL);
        UUID id = UUID.randomUUID();
        Map<String, String> mud = Map.of("lane", "mud", "overhead", "none");
        MvcTestResult slower = send(branch.projectManager(), id, "access", 0, mud);
        assertThat(slower).hasStatus(409).bodyJson().extractingPath("$.by").isEqualTo("Ines");
        assertThat(slower).bodyJson().extractingPath("$.version").isEqualTo(1);
        assertThat(slower).bodyJson().extractingPath("$.theirs.length()").isEqualTo(1);
        assertThat(slower).bodyJson().extractingPath("$.theirs[0].field").isEqualTo("lane");
        assertThat(slower).bodyJson().extractingPath("$.theirs[0].theirs").isEqualTo("gravel");
        assertThat(slower).bodyJson().extractingPath("$.theirs[0].yours").isEqualTo("mud");
        assertThat(lane()).isEqualTo("gravel");
        assertThat(send(branch.projectManager(), id, "access", 1, mud)).hasStatusOk();
        assertThat(lane()).isEqualTo("mud");
    }

    @Test
    void theSameReadingsByTwoPeopleAreNoConflict() {
        send(branch.manager(), UUID.randomUUID(), "access", 0, GRAVEL);
        MvcTestResult slower = send(branch.projectManager(), UUID.randomUUID(), "access", 0, GRAVEL);
        assertThat(slower).hasStatusOk().bodyJson().extractingPath("$.version").isEqualTo(1);
    }

    @Test
    void whatIsNoValueIsRefusedAtItsFieldAndMayComeAgain() {
        UUID id = UUID.randomUUID();
        MvcTestResult refused = send(branch.projectManager(), id, "service", 0, Map.of("main_a", "lots"));
        assertThat(refused)
                .hasStatus(422)
                .bodyJson()
                .extractingPath("$.problems[0].field")
                .isEqualTo("main_a");
        assertThat(send(branch.projectManager(), id, "service", 0, Map.of("main_a", "200")))
                .hasStatusOk();
    }

    @Test
    void aReadingOutsideItsLimitsIsStoredAndThePhoneIsToldToAsk() {
        MvcTestResult kept = send(branch.projectManager(), UUID.randomUUID(), "service", 0, Map.of("main_a", "9"));
        assertThat(kept).hasStatusOk().bodyJson().extractingPath("$.asked").isEqualTo(1);
        assertThat(kept).bodyJson().extractingPath("$.next").isEqualTo("/projects/" + project + "/survey/service");
    }

    @Test
    void nothingIsTakenInAnothersNameOrWithoutANumber() {
        Visitor tamsin = branch.projectManager();
        String ines = branch.manager().personId().toString();
        MvcTestResult foreign = sendAs(tamsin, ines, UUID.randomUUID().toString(), "access", 0, GRAVEL);
        assertThat(foreign).hasStatus(403).bodyJson().extractingPath("$.said").isEqualTo("not-theirs");
        MvcTestResult numberless = sendAs(tamsin, tamsin.personId().toString(), "1", "access", 0, GRAVEL);
        assertThat(numberless).hasStatus(422);
        assertThat(lines()).isEqualTo(linesBefore);
    }

    @Test
    void anotherBranchFindsNothingAndADesignerMayNot() {
        MvcTestResult outside = send(world.branch().manager(), UUID.randomUUID(), "access", 0, GRAVEL);
        assertThat(outside).hasStatus(404).bodyJson().extractingPath("$.said").isEqualTo("refused");
        assertThat(send(branch.projectManager(), UUID.randomUUID(), "cellar", 0, GRAVEL))
                .hasStatus(404);
        MvcTestResult lead = send(branch.crewLead(), UUID.randomUUID(), "access", 0, GRAVEL);
        assertThat(lead).hasStatus(403).bodyJson().extractingPath("$.said").isEqualTo("refused");
    }

    @Test
    void withoutTheTokenOrAnybodySignedInAPageSaysSoAndNothingIsTaken() {
        String address = "/projects/" + project + "/survey/access/sending";
        MvcTestResult tokenless = mvc.post()
                .uri(address)
                .with(world.signedIn(branch.projectManager()))
                .param("lane", "gravel")
                .exchange();
        assertThat(tokenless).hasStatus(403).hasContentTypeCompatibleWith("text/html");
        MvcTestResult nobody =
                mvc.post().uri(address).with(csrf()).param("lane", "gravel").exchange();
        assertThat(nobody).hasStatus4xxClientError().hasContentTypeCompatibleWith("text/html");
        assertThat(lines()).isEqualTo(linesBefore);
    }

    @Test
    void aConnectionThatDiesInTheMiddleLeavesNothingAndTheSameSendingIsStoredLater() {
        PhoneSending sending =
                new PhoneSending(UUID.randomUUID(), branch.projectManager().personId(), null);
        assertThatThrownBy(() -> world.as(
                        branch.projectManager(),
                        () -> transaction.execute(status -> {
                            sendings.part(Optional.of(sending), project, SurveyPart.ACCESS, 0, GRAVEL);
                            return jdbc.sql("select pg_terminate_backend(pg_backend_pid())")
                                    .query(Boolean.class)
                                    .single();
                        })))
                .isInstanceOf(RuntimeException.class);
        assertThat(lines()).isEqualTo(linesBefore);
        PhoneReply later = world.as(
                branch.projectManager(),
                () -> sendings.part(Optional.of(sending), project, SurveyPart.ACCESS, 0, GRAVEL));
        assertThat(later).isEqualTo(PhoneReply.stored(1, 0));
        assertThat(lines()).isEqualTo(linesBefore + 1);
    }

    @Test
    void aPhotoThatComesTwiceIsOnePhoto() {
        UUID id = UUID.randomUUID();
        assertThat(photo(id)).hasStatusOk().bodyJson().extractingPath("$.said").isEqualTo("stored");
        assertThat(photo(id)).hasStatusOk().bodyJson().extractingPath("$.said").isEqualTo("already");
        assertThat(lines()).isEqualTo(linesBefore + 1);
    }

    private MvcTestResult photo(UUID id) {
        return mvc.post()
                .uri("/projects/" + project + "/survey/photos/2/sending")
                .multipart()
                .file(new MockMultipartFile("photo", "meter.jpg", "image/jpeg", MadeUpPhoto.plain()))
                .param("sending", id.toString())
                .param("person", branch.projectManager().personId().toString())
                .with(world.signedIn(branch.projectManager()))
                .with(csrf())
                .exchange();
    }

    @Test
    void aPhoneAsksWhoIsSignedIn() {
        MvcTestResult here = pages.get(branch.projectManager(), "/phone");
        assertThat(here)
                .hasStatusOk()
                .bodyJson()
                .extractingPath("$.person")
                .isEqualTo(branch.projectManager().personId().toString());
        assertThat(here).bodyJson().extractingPath("$.header").isEqualTo("X-CSRF-TOKEN");
        assertThat(here).bodyJson().extractingPath("$.token").asString().isNotBlank();
    }
}
