package org.plumbrow.account.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.Queries;
import org.plumbrow.TestBrowser;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.account.BranchPeople;
import org.plumbrow.account.PersonCard;
import org.plumbrow.account.person.Credentials;
import org.plumbrow.web.Role;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.assertj.MockMvcTester;

@PlumbrowTest
class PeopleTest {

    private static final String PASSWORD = "grommet lantern quarry fig";

    @Autowired
    MockMvcTester mvc;

    @Autowired
    TestWorld world;

    @Autowired
    BranchPeople people;

    @Autowired
    Credentials credentials;

    @Autowired
    JdbcClient jdbc;

    private TestBranch branch;
    private Visitor dov;
    private TestBrowser manager;
    private TestBrowser owner;

    @BeforeEach
    void aBranch() {
        branch = world.branch();
        dov = branch.designer();
        manager = signedIn(branch.manager());
        owner = signedIn(branch.owner());
    }

    private TestBrowser signedIn(Visitor visitor) {
        return new TestBrowser(mvc).always(request -> request.with(world.signedIn(visitor)));
    }

    private String address() {
        return "/people/" + dov.personId();
    }

    @Test
    void rolesHoldAtOnceAreWrittenDownAndCanBeUndone() {
        manager.open(address());
        assertThat(manager.submit(address() + "/roles", Map.of("roles", "PROJECT_MANAGER")))
                .hasRedirectedUrl(address());
        assertThat(rolesOfDov()).containsExactly(Role.PROJECT_MANAGER);
        assertThat(jdbc.sql("select sentence from security_event where person_id = ? order by id desc limit 1")
                        .param(branch.manager().personId())
                        .query(String.class)
                        .single())
                .isEqualTo("Dov in Branch %s: from designer to project manager.".formatted(branch.code()));

        manager.follow();
        String undo = manager.page().selectFirst("form[action*=version]").attr("action");
        assertThat(manager.submit(undo, Map.of())).hasStatus3xxRedirection();
        assertThat(rolesOfDov()).containsExactly(Role.DESIGNER);
    }

    @Test
    void withoutARoleAPersonIsOutAndWhoTookItCanGiveItBack() {
        manager.open(address());
        var token = manager.page().selectFirst("input[name=_csrf]").val();
        assertThat(manager.post(address() + "/roles", Map.of("version", "0", "_csrf", token)))
                .hasRedirectedUrl(address());
        assertThat(world.as(branch.manager(), () -> people.find(branch.id(), dov.personId())))
                .isEmpty();
        manager.open(address());
        assertThat(manager.page().selectFirst("h1").text()).startsWith("Dov, no role in");
        manager.submit(address() + "/roles", Map.of("roles", "DESIGNER"));
        assertThat(rolesOfDov()).containsExactly(Role.DESIGNER);
    }

    @Test
    void whoeverSavesOverANewerChangeSeesItFirst() {
        manager.open(address());
        owner.open(address());
        owner.submit(address() + "/roles", Map.of("roles", "CREW_LEAD"));
        assertThat(manager.submit(address() + "/roles", Map.of("roles", "PROJECT_MANAGER")))
                .hasStatus(409)
                .bodyText()
                .contains("Somebody changed Dov after you opened this page. Now: crew lead.");
        assertThat(manager.page().selectFirst("input[value=PROJECT_MANAGER]").hasAttr("checked"))
                .as("what was ticked stays ticked")
                .isTrue();
        assertThat(rolesOfDov()).containsExactly(Role.CREW_LEAD);
        manager.submit(address() + "/roles", Map.of());
        assertThat(rolesOfDov()).containsExactly(Role.PROJECT_MANAGER);
    }

    @Test
    void aManagerCannotTakeTheBranchFromThemselves() {
        String own = "/people/" + branch.manager().personId();
        manager.open(own);
        assertThat(manager.submit(own + "/roles", Map.of("roles", "DESIGNER")))
                .hasStatus(422)
                .bodyText()
                .contains("You cannot take the branch from yourself.");
    }

    @Test
    void anEndedAccountIsSignedOutAndMayBeOpenedAgain() {
        credentials.change(dov.personId(), PASSWORD);
        TestBrowser dovs = new TestBrowser(mvc);
        dovs.signIn(dov.email(), PASSWORD);
        assertThat(dovs.open("/you")).hasStatusOk();
        owner.open(address());
        assertThat(owner.submit(address() + "/end", Map.of())).hasRedirectedUrl("/people/firm");
        assertThat(dovs.open("/you")).hasStatus3xxRedirection();
        assertThat(new TestBrowser(mvc).signIn(dov.email(), PASSWORD)).hasStatus(422);
        assertThat(manager.open(address())).hasStatus(404);

        owner.open("/people/firm");
        owner.post(
                address() + "/restore",
                Map.of("_csrf", owner.page().selectFirst("input[name=_csrf]").val()));
        assertThat(new TestBrowser(mvc).signIn(dov.email(), PASSWORD)).hasRedirectedUrl("/");
    }

    @Test
    void anOwnerSharesTheFirmButEndsNeitherThemselvesNorTheirOwnership() {
        owner.open(address());
        owner.submit(address() + "/owner?owns=true", Map.of());
        assertThat(signedIn(dov).open("/security-log")).hasStatusOk();
        String own = "/people/" + branch.owner().personId();
        String token = owner.open("/you") == null
                ? ""
                : owner.page().selectFirst("input[name=_csrf]").val();
        assertThat(owner.post(own + "/end", Map.of("_csrf", token))).hasStatus(403);
        assertThat(owner.post(own + "/owner", Map.of("_csrf", token))).hasStatus(403);
    }

    @Test
    void theListTakesTheSameQueriesHoweverManyPeopleThereAre() {
        int few = queriesOfTheList();
        for (int i = 0; i < 20; i++) {
            world.person("Person " + i, branch.id(), Role.CREW_LEAD);
        }
        assertThat(queriesOfTheList()).isEqualTo(few).isEqualTo(3);
    }

    private int queriesOfTheList() {
        return Queries.count(() -> manager.open("/people"));
    }

    @Test
    void otherRoomsChooseAmongThePeopleOfABranchByOneQuery() {
        world.person("Aster", branch.id(), Role.DESIGNER, Role.PROJECT_MANAGER);
        world.as(branch.manager(), () -> {
            assertThat(people.of(branch.id()))
                    .extracting(PersonCard::name)
                    .containsExactly("Aster", "Dov", "Ines", "Jory", "Tamsin");
            assertThat(people.of(branch.id(), Role.DESIGNER))
                    .extracting(PersonCard::name)
                    .containsExactly("Aster", "Dov");
            assertThat(Queries.count(() -> people.of(branch.id()))).isEqualTo(1);
        });
        world.as(
                world.branch().manager(),
                () -> assertThat(people.of(branch.id())).isEmpty());
    }

    private Set<Role> rolesOfDov() {
        return world.as(
                branch.manager(),
                () -> people.find(branch.id(), dov.personId()).orElseThrow().roles());
    }
}
