package org.plumbrow.account.firm;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.Queries;
import org.plumbrow.TestBrowser;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;

@PlumbrowTest
class FirmPagesTest {

    @Autowired
    MockMvcTester mvc;

    @Autowired
    TestWorld world;

    private TestBranch branch;
    private TestBrowser owner;

    @BeforeEach
    void anOwner() {
        branch = world.branch();
        owner = new TestBrowser(mvc).always(request -> request.with(world.signedIn(branch.owner())));
    }

    @Test
    void anotherBranchIsOpenedAndLookedAt() {
        String code = "Z" + branch.code();
        owner.open("/branches");
        assertThat(owner.submit(
                        "/branches",
                        Map.of(
                                "branchName",
                                "Sandbar",
                                "branchCode",
                                code.toLowerCase(Locale.ROOT),
                                "zone",
                                "America/Chicago")))
                .hasRedirectedUrl("/you?branch=" + code);
        owner.follow();
        assertThat(owner.page().selectFirst("h1").text()).isEqualTo("Olwen, firm owner in Sandbar");
        assertThat(owner.page().text()).contains("Sandbar is open.").contains("All times: Sandbar (Central Time).");
    }

    @Test
    void lettersThatAreTakenOrWrongAreRefusedAtTheirField() {
        owner.open("/branches");
        assertThat(owner.submit("/branches", Map.of("branchName", "Sandbar", "branchCode", branch.code())))
                .hasStatus(422);
        assertThat(owner.page().selectFirst("#branchCode-wrong").text())
                .isEqualTo("Another branch is called " + branch.code() + ". Choose other letters.");
        assertThat(owner.page().selectFirst("#branchName").val()).isEqualTo("Sandbar");
        owner.submit("/branches", Map.of("branchCode", "Q1"));
        assertThat(owner.page().selectFirst("#branchCode-wrong").text())
                .isEqualTo("Write two to six letters, for example QV.");
    }

    @Test
    void theSecurityLogTakesThreeQueries() {
        assertThat(Queries.count(() -> owner.open("/security-log"))).isEqualTo(3);
        assertThat(owner.page().selectFirst("h1").text()).startsWith("Security log");
    }
}
