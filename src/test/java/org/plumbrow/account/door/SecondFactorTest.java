package org.plumbrow.account.door;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestBrowser;
import org.plumbrow.TestClock;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.account.person.CodesOfAPhone;
import org.plumbrow.account.person.Credentials;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.assertj.MockMvcTester;

@PlumbrowTest
class SecondFactorTest {

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

    private TestBranch branch;
    private TestBrowser browser;

    @BeforeEach
    void peopleWithPasswords() {
        branch = world.branch();
        for (Visitor person : List.of(branch.owner(), branch.manager(), branch.projectManager())) {
            credentials.change(person.personId(), PASSWORD);
        }
        browser = new TestBrowser(mvc);
    }

    @Test
    void aManagerBeginsASecondFactorAtTheNextSignInAndThenNeedsIt() {
        String secret = begin(branch.manager());
        assertThat(browser.open("/you")).hasStatusOk();

        TestBrowser later = new TestBrowser(mvc);
        assertThat(later.signIn(branch.manager().email(), PASSWORD))
                .hasStatusOk()
                .bodyText()
                .contains("Now the code from your phone");
        assertThat(later.open("/you")).as("half way in is not in").hasStatus3xxRedirection();
        later.open("/sign-in/code");
        assertThat(later.submit("/sign-in/code", Map.of("code", "000000")))
                .hasStatus(422)
                .bodyText()
                .contains(SignInDesk.WRONG_CODE);
        clock.pass(Duration.ofSeconds(30));
        assertThat(later.submit("/sign-in/code", Map.of("code", CodesOfAPhone.code(secret, clock.instant()))))
                .hasRedirectedUrl("/");
        assertThat(later.open("/you")).hasStatusOk();
    }

    @Test
    void anOwnerOwesOneTooAProjectManagerDoesNotAndTheDemosPeopleAreExcused() {
        assertThat(browser.signIn(branch.owner().email(), PASSWORD)).bodyText().contains("First, a second factor");
        assertThat(browser.open("/you")).hasStatus3xxRedirection();
        assertThat(new TestBrowser(mvc).signIn(branch.projectManager().email(), PASSWORD))
                .hasRedirectedUrl("/");
        jdbc.sql("update person set second_factor_excused = true where id = ?")
                .param(branch.manager().personId())
                .update();
        assertThat(new TestBrowser(mvc).signIn(branch.manager().email(), PASSWORD))
                .hasRedirectedUrl("/");
    }

    @Test
    void aCodeFitsOnceAndThatOfTheStepBeforeToo() {
        String secret = begin(branch.manager());
        String used = CodesOfAPhone.code(secret, clock.instant());
        TestBrowser thief = new TestBrowser(mvc);
        thief.signIn(branch.manager().email(), PASSWORD);
        assertThat(thief.submit("/sign-in/code", Map.of("code", used)))
                .as("seen over the shoulder")
                .hasStatus(422);

        clock.pass(Duration.ofSeconds(60));
        String slow = CodesOfAPhone.code(secret, clock.instant().minusSeconds(30));
        assertThat(thief.submit("/sign-in/code", Map.of("code", slow))).hasRedirectedUrl("/");
    }

    @Test
    void anOldCodeDoesNotFit() {
        String secret = begin(branch.manager());
        clock.pass(Duration.ofMinutes(5));
        browser = new TestBrowser(mvc);
        browser.signIn(branch.manager().email(), PASSWORD);
        String old = CodesOfAPhone.code(secret, clock.instant().minusSeconds(60));
        assertThat(browser.submit("/sign-in/code", Map.of("code", old))).hasStatus(422);
    }

    @Test
    void eachRecoveryCodeSignsInOnce() {
        begin(branch.manager());
        List<String> codes = browser.page().select("ol code").eachText();
        assertThat(codes).hasSize(10).doesNotHaveDuplicates();
        TestBrowser first = new TestBrowser(mvc);
        first.signIn(branch.manager().email(), PASSWORD);
        assertThat(first.submit("/sign-in/code", Map.of("code", codes.get(3).toLowerCase())))
                .hasRedirectedUrl("/");
        TestBrowser second = new TestBrowser(mvc);
        second.signIn(branch.manager().email(), PASSWORD);
        assertThat(second.submit("/sign-in/code", Map.of("code", codes.get(3)))).hasStatus(422);
        assertThat(first.open("/you/second-factor")).bodyText().contains("9 recovery codes are left");
    }

    @Test
    void codesAreGuessedFiveTimesAtMost() {
        String secret = begin(branch.manager());
        clock.pass(Duration.ofMinutes(1));
        browser = new TestBrowser(mvc);
        browser.signIn(branch.manager().email(), PASSWORD);
        for (int guess = 0; guess < 5; guess++) {
            assertThat(browser.submit("/sign-in/code", Map.of("code", "12345" + guess)))
                    .hasStatus(422);
        }
        assertThat(browser.submit("/sign-in/code", Map.of("code", CodesOfAPhone.code(secret, clock.instant()))))
                .hasStatus(422)
                .bodyText()
                .contains("Too many tries did not fit.");
    }

    @Test
    void whoeverWaitsTenMinutesHalfWayBeginsAnew() {
        begin(branch.manager());
        TestBrowser later = new TestBrowser(mvc);
        later.signIn(branch.manager().email(), PASSWORD);
        clock.pass(Duration.ofMinutes(10));
        assertThat(later.submit("/sign-in/code", Map.of("code", "123456"))).hasRedirectedUrl("/sign-in");
    }

    @Test
    void aProjectManagerMayBeginAndEndOneAndAManagerMayNotEndIt() {
        TestBrowser pm = new TestBrowser(mvc);
        pm.signIn(branch.projectManager().email(), PASSWORD);
        pm.open("/you/second-factor");
        String secret = pm.page().selectFirst("input[name=secret]").val();
        assertThat(pm.submit("/you/second-factor", Map.of("code", "000000"))).hasStatus(422);
        assertThat(pm.page().selectFirst("input[name=secret]").val())
                .as("the same square again")
                .isEqualTo(secret);
        assertThat(pm.submit("/you/second-factor", Map.of("code", CodesOfAPhone.code(secret, clock.instant()))))
                .bodyText()
                .contains("Write these ten codes down now");
        clock.pass(Duration.ofSeconds(30));
        pm.open("/you/second-factor");
        Map<String, String> fields = Map.of(
                "code", CodesOfAPhone.code(secret, clock.instant()),
                "_csrf", pm.page().selectFirst("input[name=_csrf]").val());
        assertThat(pm.post("/you/second-factor/end", fields)).hasRedirectedUrl("/you");

        begin(branch.manager());
        browser.open("/you/second-factor");
        assertThat(browser.post(
                        "/you/second-factor/end",
                        Map.of(
                                "code",
                                "000000",
                                "_csrf",
                                browser.page().selectFirst("input[name=_csrf]").val())))
                .hasStatus(422)
                .bodyText()
                .contains("it cannot be ended");
    }

    /** @return the secret in the manager's phone; the browser shows the recovery codes */
    private String begin(Visitor person) {
        assertThat(browser.signIn(person.email(), PASSWORD)).bodyText().contains("First, a second factor");
        String secret = browser.page().selectFirst("input[name=secret]").val();
        assertThat(browser.page().selectFirst("svg.qr path[d]")).isNotNull();
        assertThat(browser.submit("/sign-in/set-up", Map.of("code", CodesOfAPhone.code(secret, clock.instant()))))
                .hasStatusOk()
                .bodyText()
                .contains("Write these ten codes down now");
        return secret;
    }
}
