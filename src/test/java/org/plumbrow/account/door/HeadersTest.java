package org.plumbrow.account.door;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** What every page tells the browser, and what a page never holds. */
@PlumbrowTest
class HeadersTest {

    private static final String POLICY =
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
                    + " connect-src 'self'; font-src 'self'; manifest-src 'self'; worker-src 'self'; form-action 'self';"
                    + " base-uri 'none'; frame-ancestors 'none'";

    @Autowired
    MockMvcTester mvc;

    @Autowired
    TestWorld world;

    @Test
    void onlyOurOwnFilesMayBeLoadedAndNoFrameMayHoldUs() {
        for (String address : List.of("/sign-in", "/forgotten", "/reset/x", "/invited/x")) {
            assertThat(mvc.get().uri(address))
                    .as(address)
                    .hasHeader("Content-Security-Policy", POLICY)
                    .hasHeader("X-Content-Type-Options", "nosniff")
                    .hasHeader("X-Frame-Options", "DENY");
        }
    }

    @Test
    void noPageOfTheseRoomsHoldsScriptOrStyleInItself() {
        TestBranch branch = world.branch();
        for (String address : List.of(
                "/you",
                "/you/password",
                "/you/second-factor",
                "/people",
                "/people/firm",
                "/people/invite",
                "/people/" + branch.designer().personId(),
                "/branches",
                "/security-log",
                "/outbox",
                "/outbox/sign-in")) {
            MvcTestResult page =
                    mvc.get().uri(address).with(world.signedIn(branch.owner())).exchange();
            assertThat(page).as(address).hasStatusOk().hasHeader("Content-Security-Policy", POLICY);
            assertThat(page)
                    .bodyText()
                    .doesNotContain(" style=")
                    .doesNotContain("hx-on")
                    .doesNotContain("<style");
            assertThat(page).bodyText().doesNotContainPattern("<script(?![^>]*src=)");
            assertThat(page).bodyText().containsOnlyOnce("<h1");
        }
    }

    @Test
    void everyFileThatThePublicPagesNameIsThereForEverybody() throws Exception {
        world.branch();
        MvcTestResult page = mvc.get().uri("/sign-in").exchange();
        var files = Jsoup.parse(page.getResponse().getContentAsString()).select("link[href], script[src]");
        assertThat(files).isNotEmpty();
        for (Element file : files) {
            assertThat(mvc.get().uri(file.hasAttr("href") ? file.attr("href") : file.attr("src")))
                    .as(file.toString())
                    .hasStatusOk();
        }
    }

    @Test
    void overHttpsTheBrowserIsToldToStayThere() {
        MvcTestResult https = mvc.get().uri("/sign-in").secure(true).exchange();
        assertThat(https.getResponse().getHeader("Strict-Transport-Security")).startsWith("max-age=31536000");
        MvcTestResult http = mvc.get().uri("/sign-in").exchange();
        assertThat(http.getResponse().getHeader("Strict-Transport-Security")).isNull();
    }

    @Test
    void behindAProxyThatSpeaksHttpsItIsTheSame() {
        MvcTestResult proxied =
                mvc.get().uri("/sign-in").header("X-Forwarded-Proto", "https").exchange();
        assertThat(proxied.getResponse().getHeader("Strict-Transport-Security")).isNotNull();
    }

    @Test
    void aFormWithoutItsTokenChangesNothing() {
        TestBranch branch = world.branch();
        assertThat(mvc.post()
                        .uri("/people/invite")
                        .param("name", "Bo")
                        .param("email", "bo@firm.example")
                        .param("roles", "DESIGNER")
                        .header("Origin", "https://elsewhere.example")
                        .with(world.signedIn(branch.manager())))
                .hasStatus(403);
        assertThat(mvc.get().uri("/people").with(world.signedIn(branch.manager())))
                .bodyText()
                .doesNotContain("bo@firm.example");
    }
}
