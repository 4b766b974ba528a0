package org.plumbrow.account.door;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestBrowser;
import org.plumbrow.TestClock;
import org.plumbrow.TestWorld;
import org.plumbrow.account.person.Credentials;
import org.plumbrow.database.BranchWall;
import org.plumbrow.web.Role;
import org.plumbrow.web.SignedIn;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.session.FindByIndexNameSessionRepository;
import org.springframework.session.Session;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import org.springframework.transaction.support.TransactionTemplate;

@PlumbrowTest
class SignInTest {

    private static final String PASSWORD = "grommet lantern quarry fig";

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

    @Autowired
    FindByIndexNameSessionRepository<? extends Session> sessions;

    private Visitor tamsin;
    private TestBrowser browser;

    @BeforeEach
    void aProjectManager() {
        tamsin = world.person("Tamsin", world.branch().id(), Role.PROJECT_MANAGER);
        credentials.change(tamsin.personId(), PASSWORD);
        browser = new TestBrowser(mvc);
    }

    @Test
    void addressAndPasswordOpenASessionThatLeadsToTheProjects() {
        assertThat(browser.signIn(tamsin.email(), PASSWORD)).hasRedirectedUrl("/");
        assertThat(browser.follow()).hasRedirectedUrl("/projects");
        assertThat(browser.open("/you")).hasStatusOk().bodyText().contains("Tamsin, project manager in");
    }

    @Test
    void eachRoleLandsWhereItWorks() {
        assertThat(Landing.of(Set.of(Role.OWNER))).isEqualTo("/look-ahead");
        assertThat(Landing.of(Set.of(Role.MANAGER, Role.CREW_LEAD))).isEqualTo("/look-ahead");
        assertThat(Landing.of(Set.of(Role.PROJECT_MANAGER))).isEqualTo("/projects");
        assertThat(Landing.of(Set.of(Role.DESIGNER))).isEqualTo("/projects");
        assertThat(Landing.of(Set.of(Role.CREW_LEAD))).isEqualTo("/crews/week");
        assertThat(Landing.of(Set.of())).isEqualTo("/you");
    }

    @Test
    void theCaseOfTheAddressDoesNotCount() {
        assertThat(browser.signIn("  " + tamsin.email().toUpperCase(Locale.ROOT) + " ", PASSWORD))
                .hasRedirectedUrl("/");
    }

    @Test
    void aWrongPasswordKeepsTheAddressAndSaysWhatToDo() {
        assertThat(browser.signIn(tamsin.email(), "something else entirely"))
                .hasStatus(422)
                .bodyText()
                .contains(SignInDesk.WRONG)
                .contains("value=\"" + tamsin.email() + "\"")
                .doesNotContain("something else entirely");
    }

    @Test
    void whoIsNotSignedInIsLedToTheSignInPageAndOnFromThere() {
        assertThat(browser.open("/you?branch=QV")).hasRedirectedUrl("/sign-in?next=%2Fyou%3Fbranch%3DQV");
        browser.follow();
        assertThat(browser.submit("/sign-in", Map.of("email", tamsin.email(), "password", PASSWORD)))
                .hasRedirectedUrl("/you?branch=QV");
    }

    @Test
    void anotherSiteIsNeverWhereOneGoesOn() {
        for (String elsewhere : List.of("https://elsewhere.example/", "//elsewhere.example", "/\\elsewhere.example")) {
            TestBrowser fresh = new TestBrowser(mvc);
            fresh.open("/sign-in");
            assertThat(fresh.submit(
                            "/sign-in", Map.of("email", tamsin.email(), "password", PASSWORD, "next", elsewhere)))
                    .hasRedirectedUrl("/");
        }
    }

    @Test
    void aSessionPlantedBeforeSigningInOpensNothingAfterwards() {
        browser.open("/sign-in");
        String planted = browser.cookie("SESSION");
        assertThat(planted).isNotNull();
        browser.submit("/sign-in", Map.of("email", tamsin.email(), "password", PASSWORD));
        assertThat(browser.cookie("SESSION")).isNotNull().isNotEqualTo(planted);

        TestBrowser attacker = new TestBrowser(mvc);
        attacker.plant("SESSION", planted);
        assertThat(attacker.open("/you")).hasStatus3xxRedirection();
        assertThat(browser.open("/you")).hasStatusOk();
    }

    @Test
    void theSessionKeepsThePersonsIdAndTheHourItBeganAndNothingElseOfThem() {
        browser.signIn(tamsin.email(), PASSWORD);
        browser.open("/you");
        Session session = sessions.findById(new String(Base64.getDecoder().decode(browser.cookie("SESSION"))));
        assertThat(session.getAttributeNames())
                .containsExactlyInAnyOrder(
                        "SPRING_SECURITY_CONTEXT",
                        "signedInSince",
                        "org.springframework.security.web.csrf.HttpSessionCsrfTokenRepository.CSRF_TOKEN");
        SecurityContext context = session.getAttribute("SPRING_SECURITY_CONTEXT");
        var authentication = context.getAuthentication();
        assertThat(authentication.getPrincipal()).isEqualTo(new SignedIn(tamsin.personId()));
        assertThat(authentication.getCredentials()).isNull();
        assertThat(authentication.getDetails()).isNull();
        assertThat(authentication.getAuthorities()).isEmpty();
    }

    @Test
    void aRoleThatWasTakenAwayIsGoneAtTheNextClick() {
        browser.signIn(tamsin.email(), PASSWORD);
        assertThat(browser.open("/you")).bodyText().contains("project manager in");
        BranchWall.everywhere(
                () -> transaction.executeWithoutResult(status -> jdbc.sql("delete from membership where person_id = ?")
                        .param(tamsin.personId())
                        .update()));
        assertThat(browser.open("/you")).bodyText().contains("Tamsin, in no branch");
    }

    @Test
    void signingOutEndsTheSession() {
        browser.signIn(tamsin.email(), PASSWORD);
        String session = browser.cookie("SESSION");
        browser.open("/you");
        assertThat(browser.submit("/sign-out", Map.of())).hasRedirectedUrl("/sign-in?out");
        browser.plant("SESSION", session);
        assertThat(browser.open("/you")).hasStatus3xxRedirection();
    }

    @Test
    void signingOutEverywhereEndsEverySessionAndEveryKeptPhone() {
        TestBrowser phone = new TestBrowser(mvc);
        phone.open("/sign-in");
        phone.submit("/sign-in", Map.of("email", tamsin.email(), "password", PASSWORD, "keep", "true"));
        assertThat(phone.open("/you")).hasStatusOk();
        browser.signIn(tamsin.email(), PASSWORD);
        browser.open("/you");
        assertThat(browser.submit("/you/sign-out-everywhere", Map.of())).hasRedirectedUrl("/sign-in?everywhere");
        assertThat(browser.open("/you")).hasStatus3xxRedirection();
        assertThat(phone.open("/you")).hasStatus3xxRedirection();
    }

    @Test
    void aSessionEndsAfterTwelveHoursHoweverBusyItWas() {
        browser.signIn(tamsin.email(), PASSWORD);
        clock.pass(Duration.ofHours(12));
        assertThat(browser.open("/you")).hasStatusOk();
        clock.pass(Duration.ofSeconds(1));
        assertThat(browser.open("/you")).hasStatus3xxRedirection();
    }

    @Test
    void aPartOfAPageThatNobodyMayReadAnyMoreSendsTheWholePageToSignIn() {
        MvcTestResult part = mvc.get()
                .uri("/you")
                .header("HX-Request", "true")
                .header("HX-Current-URL", "http://localhost/look-ahead")
                .exchange();
        assertThat(part).hasStatus(401).hasHeader("HX-Redirect", "/sign-in?next=/look-ahead");
    }

    @Test
    void whoIsSignedInDoesNotSeeTheSignInPageAgain() {
        browser.signIn(tamsin.email(), PASSWORD);
        assertThat(browser.open("/sign-in?next=/you")).hasRedirectedUrl("/you");
    }
}
