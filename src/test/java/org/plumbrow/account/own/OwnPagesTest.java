package org.plumbrow.account.own;

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
import org.plumbrow.account.Accounts;
import org.plumbrow.account.person.Credentials;
import org.plumbrow.web.Role;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;

@PlumbrowTest
class OwnPagesTest {

    private static final String PASSWORD = "grommet lantern quarry fig";
    private static final String ANOTHER = "walnut gate thistle pump";

    @Autowired
    MockMvcTester mvc;

    @Autowired
    TestWorld world;

    @Autowired
    Credentials credentials;

    @Autowired
    Accounts accounts;

    private TestBranch branch;
    private Visitor tamsin;
    private TestBrowser browser;

    @BeforeEach
    void signedInTwice() {
        branch = world.branch();
        tamsin = branch.projectManager();
        credentials.change(tamsin.personId(), PASSWORD);
        browser = new TestBrowser(mvc);
        browser.signIn(tamsin.email(), PASSWORD);
    }

    @Test
    void aNewPasswordEndsTheOtherSessionsAndKeepsThisOne() {
        TestBrowser elsewhere = new TestBrowser(mvc);
        elsewhere.signIn(tamsin.email(), PASSWORD);
        browser.open("/you/password");
        assertThat(browser.submit("/you/password", Map.of("current", PASSWORD, "password", ANOTHER, "again", ANOTHER)))
                .hasRedirectedUrl("/you");
        assertThat(browser.follow()).hasStatusOk().bodyText().contains("The new password holds.");
        assertThat(elsewhere.open("/you")).hasStatus3xxRedirection();
        assertThat(new TestBrowser(mvc).signIn(tamsin.email(), ANOTHER)).hasRedirectedUrl("/");
    }

    @Test
    void withoutThePresentPasswordNothingChanges() {
        browser.open("/you/password");
        assertThat(browser.submit("/you/password", Map.of("current", ANOTHER, "password", ANOTHER, "again", ANOTHER)))
                .hasStatus(422)
                .bodyText()
                .contains("This is not your present password.");
        assertThat(new TestBrowser(mvc).signIn(tamsin.email(), PASSWORD)).hasRedirectedUrl("/");
    }

    @Test
    void thePresentPasswordIsGuessedFiveTimesAtMost() {
        browser.open("/you/password");
        for (int guess = 0; guess < 5; guess++) {
            browser.submit("/you/password", Map.of("current", "guess" + guess));
        }
        assertThat(browser.submit("/you/password", Map.of("current", PASSWORD, "password", ANOTHER, "again", ANOTHER)))
                .hasStatus(422)
                .bodyText()
                .contains("Too many tries did not fit.");
    }

    @Test
    void whoIsInTwoBranchesChoosesWhichOneToLookAt() {
        TestBranch other = world.branch();
        accounts.give(tamsin.personId(), other.id(), Set.of(Role.DESIGNER));
        browser.open("/you");
        assertThat(browser.page().selectFirst("h1").text())
                .isEqualTo("Tamsin, project manager in Branch " + branch.code());
        browser.open(browser.page()
                .selectFirst("a:contains(Look at Branch " + other.code() + ")")
                .attr("href"));
        assertThat(browser.page().selectFirst("h1").text()).isEqualTo("Tamsin, designer in Branch " + other.code());
        browser.open("/you");
        assertThat(browser.page().selectFirst("h1").text())
                .as("seen last")
                .isEqualTo("Tamsin, designer in Branch " + other.code());
    }

    @Test
    void eachSeesThePlacesOfTheirRole() {
        assertThat(browser.open("/you"))
                .bodyText()
                .doesNotContain("href=\"/people\"")
                .doesNotContain("/security-log");
        assertThat(mvc.get().uri("/you").with(world.signedIn(branch.manager())))
                .bodyText()
                .contains("href=\"/people\"")
                .contains("href=\"/outbox\"")
                .doesNotContain("/security-log");
        assertThat(mvc.get().uri("/you").with(world.signedIn(branch.owner())))
                .bodyText()
                .contains("href=\"/branches\"")
                .contains("href=\"/security-log\"");
    }

    @Test
    void thePageTakesTwoQueries() {
        assertThat(Queries.count(() -> mvc.get()
                        .uri("/you")
                        .with(world.signedIn(branch.manager()))
                        .exchange()))
                .isEqualTo(2);
    }
}
