package org.plumbrow.account.door;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestBrowser;
import org.plumbrow.TestClock;
import org.plumbrow.TestWorld;
import org.plumbrow.account.person.Credentials;
import org.plumbrow.account.person.Tries;
import org.plumbrow.account.person.Tries.Subject;
import org.plumbrow.web.Role;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.assertj.MockMvcTester;

@PlumbrowTest
class LockoutTest {

    private static final String PASSWORD = "grommet lantern quarry fig";
    private static final String LOCKED_FOR_ONE =
            "Too many tries did not fit. Try again in 1 minute, or have a link sent to choose a new password.";
    private static final String LOCKED_FOR_TWO =
            "Too many tries did not fit. Try again in 2 minutes, or have a link sent to choose a new password.";

    @Autowired
    MockMvcTester mvc;

    @Autowired
    TestWorld world;

    @Autowired
    TestClock clock;

    @Autowired
    Credentials credentials;

    @Autowired
    Tries tries;

    @Autowired
    JdbcClient jdbc;

    private Visitor tamsin;
    private TestBrowser browser;

    @BeforeEach
    void aProjectManager() {
        tamsin = world.person("Tamsin", world.branch().id(), Role.PROJECT_MANAGER);
        credentials.change(tamsin.personId(), PASSWORD);
        browser = new TestBrowser(mvc);
    }

    @Test
    void theFifthMissLocksTheAddressEvenForTheRightPassword() {
        missFiveTimes(tamsin.email(), LOCKED_FOR_ONE);
        assertThat(browser.signIn(tamsin.email(), PASSWORD))
                .hasStatus(422)
                .bodyText()
                .contains(LOCKED_FOR_ONE);
        clock.pass(Duration.ofMinutes(1));
        assertThat(browser.signIn(tamsin.email(), PASSWORD)).hasRedirectedUrl("/");
    }

    @Test
    void eachFurtherLockIsTwiceAsLong() {
        missFiveTimes(tamsin.email(), LOCKED_FOR_ONE);
        clock.pass(Duration.ofMinutes(1));
        missFiveTimes(tamsin.email(), LOCKED_FOR_TWO);
        clock.pass(Duration.ofSeconds(119));
        assertThat(browser.signIn(tamsin.email(), PASSWORD)).bodyText().contains(LOCKED_FOR_ONE);
        clock.pass(Duration.ofSeconds(1));
        assertThat(browser.signIn(tamsin.email(), PASSWORD)).hasRedirectedUrl("/");
    }

    @Test
    void anUnknownAddressIsAnsweredWordForWordAlike() {
        missFiveTimes("nobody." + UUID.randomUUID() + "@test.example", LOCKED_FOR_ONE);
    }

    @Test
    void aLockedSourceIsNotHeardWhateverAddressItTries() {
        String source = "source-of-" + tamsin.personId();
        for (int miss = 0; miss < 50; miss++) {
            tries.take(Subject.source(source));
        }
        browser.always(request -> request.with(asked -> {
            asked.setRemoteAddr(source);
            return asked;
        }));
        assertThat(browser.signIn(tamsin.email(), PASSWORD))
                .hasStatus(422)
                .bodyText()
                .contains(LOCKED_FOR_ONE);
        clock.pass(Duration.ofMinutes(1));
        assertThat(browser.signIn(tamsin.email(), PASSWORD)).hasRedirectedUrl("/");
    }

    @Test
    void theOwnerCanReadThatItHappened() {
        missFiveTimes(tamsin.email(), LOCKED_FOR_ONE);
        assertThat(jdbc.sql("select kind from security_event where person_id = ? order by id")
                        .param(tamsin.personId())
                        .query(String.class)
                        .list())
                .containsExactly("missed", "missed", "missed", "missed", "locked");
    }

    private void missFiveTimes(String email, String inTheEnd) {
        for (int miss = 1; miss <= 4; miss++) {
            assertThat(browser.signIn(email, "wrong wrong wrong"))
                    .hasStatus(422)
                    .bodyText()
                    .contains(SignInDesk.WRONG);
        }
        assertThat(browser.signIn(email, "wrong wrong wrong"))
                .hasStatus(422)
                .bodyText()
                .contains(inTheEnd);
    }
}
