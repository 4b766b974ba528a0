package org.plumbrow.account.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestBrowser;
import org.plumbrow.TestClock;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.account.person.Credentials;
import org.plumbrow.account.person.Tokens;
import org.plumbrow.database.BranchWall;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import org.springframework.transaction.support.TransactionTemplate;

/** Invitations and new passwords by link. */
@PlumbrowTest
class LinksTest {

    private static final String PASSWORD = "grommet lantern quarry fig";
    private static final String ANOTHER = "walnut gate thistle pump";

    @Autowired
    MockMvcTester mvc;

    @Autowired
    TestWorld world;

    @Autowired
    TestClock clock;

    @Autowired
    Credentials credentials;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TransactionTemplate transaction;

    private TestBranch branch;
    private TestBrowser manager;
    private TestBrowser guest;
    private String email;

    @BeforeEach
    void aManagerWhoInvites() {
        branch = world.branch();
        email = "bo." + branch.code().toLowerCase() + "@firm.example";
        manager = new TestBrowser(mvc).always(request -> request.with(world.signedIn(branch.manager())));
        guest = new TestBrowser(mvc);
    }

    @Test
    void anInvitedPersonChoosesAPasswordAndIsWhatTheInvitationSays() {
        guest.open(invite());
        assertThat(guest.page().selectFirst("h1").text()).isEqualTo("Join Branch " + branch.code());
        assertThat(guest.page().text()).contains("Ines invites you as branch manager, designer.");
        assertThat(join(PASSWORD, PASSWORD)).hasRedirectedUrl("/sign-in?welcome");
        assertThat(new TestBrowser(mvc).signIn(email, PASSWORD)).bodyText().contains("First, a second factor");
        manager.open("/people");
        assertThat(manager.page().select("tr:contains(Bo)").text()).contains("branch manager, designer");
    }

    @Test
    void anInvitationWorksOnce() {
        String link = invite();
        guest.open(link);
        join(PASSWORD, PASSWORD);
        assertThat(guest.open(link)).hasStatus(404).bodyText().contains("This link has ended");
        assertThat(letter("invitation:%"))
                .as("the text went when the link was used")
                .isEmpty();
    }

    @Test
    void anInvitationEndsAfterSevenDays() {
        String link = invite();
        clock.pass(Duration.ofDays(7).minusSeconds(1));
        assertThat(guest.open(link)).hasStatusOk();
        clock.pass(Duration.ofSeconds(1));
        assertThat(guest.open(link)).hasStatus(404);
        assertThat(guest.open("/invited/" + Tokens.next())).hasStatus(404);
    }

    @Test
    void aWithdrawnInvitationOpensNothingAndANewOneReplacesTheOld() {
        String first = invite();
        String second = invite();
        assertThat(guest.open(first)).hasStatus(404);
        manager.open("/people");
        manager.submit(
                manager.page().selectFirst("form[action^=/people/invitations]").attr("action"), Map.of());
        assertThat(guest.open(second)).hasStatus(404);
        manager.open("/people");
        assertThat(manager.page().select("form[action^=/people/invitations]")).isEmpty();
    }

    @Test
    void theLinkIsKeptAsAHashAndTheMailCarriesTheSame() {
        String link = invite();
        String token = link.substring(link.lastIndexOf('/') + 1);
        assertThat(rows("select count(*) from invitation where token_hash = ?", token))
                .isZero();
        assertThat(letter("invitation:%")).contains("http://localhost:8080/invited/" + token);
    }

    @Test
    void aPasswordThatIsTooShortOrTypedDifferentlyIsRefusedAtItsField() {
        guest.open(invite());
        assertThat(join("short", "short")).hasStatus(422).bodyText().contains("Write at least 12 characters");
        assertThat(guest.page().selectFirst("#password-wrong")).isNotNull();
        assertThat(guest.page().selectFirst("input[name=name]").val()).isEqualTo("Bo");
        assertThat(join(PASSWORD, ANOTHER)).hasStatus(422).bodyText().contains("The two are not the same.");
    }

    @Test
    void whatIsMissingInAnInvitationIsSaidAndWhatWasTypedStays() {
        manager.open("/people/invite");
        assertThat(manager.submit("/people/invite", Map.of("name", "Bo", "email", "bo at firm")))
                .hasStatus(422)
                .bodyText()
                .contains("Write the whole e-mail address, for example name@firm.example.")
                .contains("Choose at least one role.")
                .contains("value=\"bo at firm\"")
                .contains("2 things to look at");
    }

    @Test
    void anAddressWhoseAccountHasEndedIsNotInvited() {
        jdbc.sql("update person set ended_at = now() where id = ?")
                .param(branch.designer().personId())
                .update();
        manager.open("/people/invite");
        var token = manager.page()
                .selectFirst("form[action='/people/invite'] input[name=_csrf]")
                .val();
        Map<String, String> dov =
                Map.of("name", "Dov", "email", branch.designer().email(), "roles", "DESIGNER", "_csrf", token);
        assertThat(manager.post("/people/invite", dov))
                .hasStatus(422)
                .bodyText()
                .contains("The account with this address has ended. A firm owner can open it again.");
    }

    @Test
    void whoHasAnAccountIsGivenTheRolesAtOnce() {
        TestBranch other = world.branch();
        manager.open("/people/invite");
        assertThat(manager.submit(
                        "/people/invite",
                        Map.of("name", "Dov", "email", other.designer().email().toUpperCase(), "roles", "DESIGNER")))
                .hasRedirectedUrl("/people");
        manager.open("/people");
        assertThat(manager.page()
                        .select("tr:contains(" + other.designer().email() + ")")
                        .text())
                .contains("designer");
    }

    @Test
    void aNewPasswordEndsEverySessionAndKeptPhoneAndTheLinkWorksOnce() {
        Visitor tamsin = branch.projectManager();
        credentials.change(tamsin.personId(), PASSWORD);
        TestBrowser phone = new TestBrowser(mvc);
        phone.open("/sign-in");
        phone.submit("/sign-in", Map.of("email", tamsin.email(), "password", PASSWORD, "keep", "true"));
        assertThat(phone.open("/you")).hasStatusOk();

        String link = ask(tamsin);
        guest.open(link);
        assertThat(guest.submit(link, Map.of("password", ANOTHER, "again", ANOTHER)))
                .hasRedirectedUrl("/sign-in?changed");
        assertThat(phone.open("/you")).hasStatus3xxRedirection();
        assertThat(new TestBrowser(mvc).signIn(tamsin.email(), PASSWORD)).hasStatus(422);
        assertThat(new TestBrowser(mvc).signIn(tamsin.email(), ANOTHER)).hasRedirectedUrl("/");
        assertThat(guest.open(link)).hasStatus(404).bodyText().contains("This link has ended");
    }

    @Test
    void twoWhoUseTheSameLinkAtOnceAreNotBothHeard() {
        Visitor tamsin = branch.projectManager();
        String link = ask(tamsin);
        TestBrowser first = new TestBrowser(mvc);
        TestBrowser second = new TestBrowser(mvc);
        first.open(link);
        second.open(link);
        assertThat(first.submit(link, Map.of("password", PASSWORD, "again", PASSWORD)))
                .hasStatus3xxRedirection();
        assertThat(second.submit(link, Map.of("password", ANOTHER, "again", ANOTHER)))
                .hasStatus(404);
        assertThat(new TestBrowser(mvc).signIn(tamsin.email(), PASSWORD)).hasRedirectedUrl("/");
    }

    @Test
    void aLinkForANewPasswordEndsAfterAnHour() {
        String link = ask(branch.projectManager());
        clock.pass(Duration.ofMinutes(60).minusSeconds(1));
        assertThat(guest.open(link)).hasStatusOk().hasHeader("Referrer-Policy", "no-referrer");
        clock.pass(Duration.ofSeconds(1));
        assertThat(guest.open(link)).hasStatus(404);
    }

    @Test
    void usingOneLinkEndsTheOthersAndOpensTheLock() {
        Visitor tamsin = branch.projectManager();
        credentials.change(tamsin.personId(), PASSWORD);
        String first = ask(tamsin);
        String second = ask(tamsin);
        for (int miss = 0; miss < 6; miss++) {
            new TestBrowser(mvc).signIn(tamsin.email(), "wrong wrong wrong");
        }
        guest.open(second);
        guest.submit(second, Map.of("password", ANOTHER, "again", ANOTHER));
        assertThat(guest.open(first)).hasStatus(404);
        assertThat(new TestBrowser(mvc).signIn(tamsin.email(), ANOTHER)).hasRedirectedUrl("/");
    }

    @Test
    void whoeverAsksForALinkIsToldTheSame() {
        guest.open("/forgotten");
        guest.submit("/forgotten", Map.of("email", branch.projectManager().email()));
        String known = guest.page().body().text();
        guest.open("/forgotten");
        guest.submit("/forgotten", Map.of("email", "nobody." + branch.code() + "@test.example"));
        assertThat(guest.page().body().text()).isEqualTo(known).contains("If there is an account with this address");
    }

    @Test
    void anAddressIsSentFiveLinksInARowAtMost() {
        for (int i = 0; i < 7; i++) {
            new TestBrowser(mvc).post("/forgotten", Map.of());
            guest.open("/forgotten");
            guest.submit("/forgotten", Map.of("email", branch.projectManager().email()));
        }
        assertThat(rows(
                        "select count(*) from notice where to_address = ?",
                        branch.projectManager().email()))
                .isEqualTo(5);
    }

    private String invite() {
        manager.open("/people/invite");
        Map<String, String> fields = Map.of("name", "Bo", "email", email);
        var request = manager.page()
                .selectFirst("form[action='/people/invite'] input[name=_csrf]")
                .val();
        manager.post(
                "/people/invite?roles=DESIGNER&roles=MANAGER",
                Map.of("name", "Bo", "email", fields.get("email"), "_csrf", request));
        String link = manager.page().selectFirst("code").text();
        return link.substring(link.indexOf("/invited/"));
    }

    private MvcTestResult join(String password, String again) {
        String action = guest.page().selectFirst("form").attr("action");
        return guest.submit(action, Map.of("password", password, "again", again));
    }

    private String ask(Visitor person) {
        guest.open("/forgotten");
        guest.submit("/forgotten", Map.of("email", person.email()));
        Matcher link = Pattern.compile("(/reset/\\S+)").matcher(latestTo(person.email()));
        assertThat(link.find()).isTrue();
        return link.group(1);
    }

    private String latestTo(String address) {
        return everywhere("select body from notice where to_address = ? order by id desc limit 1", address);
    }

    private String letter(String about) {
        return BranchWall.everywhere(() -> transaction.execute(status -> jdbc.sql(
                        "select body from notice where to_address = ? and about like ? order by id desc limit 1")
                .params(email, about)
                .query(String.class)
                .single()));
    }

    private String everywhere(String sql, String parameter) {
        return BranchWall.everywhere(() -> transaction.execute(
                status -> jdbc.sql(sql).param(parameter).query(String.class).single()));
    }

    private long rows(String sql, String parameter) {
        return Long.parseLong(everywhere(sql, parameter));
    }
}
