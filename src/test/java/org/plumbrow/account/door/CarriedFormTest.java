package org.plumbrow.account.door;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestBrowser;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.account.person.Credentials;
import org.plumbrow.database.BranchWall;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import org.springframework.transaction.support.TransactionTemplate;

/** A form sent after the session's end: nothing typed is lost, and nothing is done before its person says so again. */
@PlumbrowTest
class CarriedFormTest {

    private static final String PASSWORD = "grommet lantern quarry fig";

    @Autowired
    MockMvcTester mvc;

    @Autowired
    TestWorld world;

    @Autowired
    Credentials credentials;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TransactionTemplate transaction;

    private TestBranch branch;
    private TestBrowser browser;

    @BeforeEach
    void aManagerWithTheInvitationFormOpen() {
        branch = world.branch();
        credentials.change(branch.manager().personId(), PASSWORD);
        jdbc.sql("update person set second_factor_excused = true where id = ?")
                .param(branch.manager().personId())
                .update();
        browser = new TestBrowser(mvc);
        browser.signIn(branch.manager().email(), PASSWORD);
        browser.open("/people/invite");
    }

    private Map<String, String> typed(String email) {
        Map<String, String> fields = new HashMap<>();
        fields.put(
                "_csrf",
                browser.page()
                        .selectFirst("form[action='/people/invite'] input[name=_csrf]")
                        .val());
        fields.put("name", "Bo <b> O'Neil");
        fields.put("email", email);
        fields.put("roles", "DESIGNER");
        return fields;
    }

    @Test
    void whatWasTypedComesBackAfterSigningInAndIsSavedByOneButton() {
        String email = "bo." + branch.code().toLowerCase(Locale.ROOT) + "@firm.example";
        Map<String, String> typed = typed(email);
        browser.lose("SESSION");
        assertThat(browser.post("/people/invite", typed))
                .hasStatus(401)
                .bodyText()
                .contains("You were away. Sign in to go on")
                .contains("What you typed is still here.");
        assertThat(invitations(email)).isZero();

        MvcTestResult back =
                browser.submit("/sign-in", Map.of("email", branch.manager().email(), "password", PASSWORD));
        assertThat(back)
                .hasStatusOk()
                .bodyText()
                .contains("This is not saved yet")
                .contains("Bo &lt;b&gt; O&#39;Neil");
        assertThat(invitations(email)).isZero();

        assertThat(browser.submit("/people/invite", Map.of()))
                .hasStatusOk()
                .bodyText()
                .contains("is invited");
        assertThat(invitations(email)).isEqualTo(1);
    }

    @Test
    void aWrongPasswordInBetweenLosesNothing() {
        String email = "bo." + branch.code().toLowerCase(Locale.ROOT) + "@firm.example";
        Map<String, String> typed = typed(email);
        browser.lose("SESSION");
        browser.post("/people/invite", typed);
        browser.submit("/sign-in", Map.of("email", branch.manager().email(), "password", "wrong wrong wrong"));
        browser.submit("/sign-in", Map.of("email", branch.manager().email(), "password", PASSWORD));
        assertThat(browser.submit("/people/invite", Map.of())).bodyText().contains("is invited");
    }

    @Test
    void aFormOfAnEarlierSessionIsOfferedAgainToWhoSignedInElsewhereMeanwhile() {
        String email = "bo." + branch.code().toLowerCase(Locale.ROOT) + "@firm.example";
        Map<String, String> typed = typed(email);
        typed.put("_csrf", "of another session");
        assertThat(browser.post("/people/invite", typed))
                .hasStatus(403)
                .bodyText()
                .contains("This is not saved yet");
        assertThat(invitations(email)).isZero();
        assertThat(browser.submit("/people/invite", Map.of())).bodyText().contains("is invited");
        assertThat(invitations(email)).isEqualTo(1);
    }

    @Test
    void aFormFromAnotherSiteIsRefusedAndNotCarried() {
        String email = "bo." + branch.code().toLowerCase(Locale.ROOT) + "@firm.example";
        Map<String, String> typed = typed(email);
        typed.remove("_csrf");
        browser.always(request -> request.header("Origin", "https://elsewhere.example"));
        assertThat(browser.post("/people/invite", typed))
                .hasStatus(403)
                .bodyText()
                .contains("This did not come from the page it belongs to")
                .doesNotContain("Bo ");
        browser.lose("SESSION");
        assertThat(browser.post("/people/invite", typed))
                .hasStatus(403)
                .bodyText()
                .doesNotContain("Bo ");
        assertThat(invitations(email)).isZero();
    }

    @Test
    void noSecretTravels() {
        browser.open("/you/password");
        Map<String, String> fields = Map.of("current", "x", "password", "a new and secret one", "again", "y");
        browser.lose("SESSION");
        browser.post("/you/password", fields);
        CarriedForm carried = CarriedForm.unpack(
                        browser.page().selectFirst("input[name=carried]").val())
                .orElseThrow();
        assertThat(carried.fields()).extracting(CarriedForm.Field::name).doesNotContain("password", "_csrf");
    }

    @Test
    void aPartOfAPageIsReplacedAsAWhole() {
        Map<String, String> typed = typed("bo@firm.example");
        browser.lose("SESSION");
        browser.always(request -> request.header("HX-Request", "true"));
        assertThat(browser.post("/people/invite", typed))
                .hasStatusOk()
                .hasHeader("HX-Retarget", "body")
                .bodyText()
                .contains("You were away");
    }

    @Test
    void whatSomebodyElsePackedLeadsNowhereElse() {
        for (String address : List.of("https://elsewhere.example/", "//elsewhere.example/x", "javascript:alert(1)")) {
            String packed = new CarriedForm(address, List.of(new CarriedForm.Field("a", "b"))).packed();
            assertThat(CarriedForm.unpack(packed)).isEmpty();
        }
        assertThat(CarriedForm.unpack("not ours")).isEmpty();
    }

    private long invitations(String email) {
        return BranchWall.everywhere(
                () -> transaction.execute(status -> jdbc.sql("select count(*) from invitation where email = ?")
                        .param(email)
                        .query(Long.class)
                        .single()));
    }
}
