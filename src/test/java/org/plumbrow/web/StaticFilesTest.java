package org.plumbrow.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestWorld;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.CacheControl;
import org.springframework.http.server.PathContainer;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.web.servlet.resource.ResourceUrlProvider;
import org.springframework.web.util.pattern.PathPattern;
import org.springframework.web.util.pattern.PathPatternParser;

/** Files of the pages carry a version in their name, and nothing else is looked for among them. */
@PlumbrowTest
class StaticFilesTest {

    @Autowired
    MockMvcTester mvc;

    @Autowired
    TestWorld world;

    @Autowired
    ResourceUrlProvider files;

    private String page() throws Exception {
        return mvc.get()
                .uri("/you")
                .with(world.signedIn(world.branch().projectManager()))
                .exchange()
                .getResponse()
                .getContentAsString();
    }

    @Test
    void aPageNamesItsStyleSheetByContentAndABrowserMayKeepIt() throws Exception {
        String page = page();
        String href = Jsoup.parse(page).select("link[rel=stylesheet]").attr("href");
        assertThat(href).matches("/plumbrow-[0-9a-f]{32}\\.css");
        assertThat(mvc.get().uri(href))
                .hasStatusOk()
                .hasContentType("text/css")
                .hasHeader(
                        "Cache-Control", CacheControl.maxAge(1, TimeUnit.HOURS).getHeaderValue());
    }

    @Test
    void aLinkToAPageIsNotLookedForAmongTheFiles() {
        PathContainer page = PathContainer.parsePath("/projects/7/gates/signed");
        PathContainer file = PathContainer.parsePath("/plumbrow.css");
        List<PathPattern> served = files.getHandlerMap().keySet().stream()
                .map(PathPatternParser.defaultInstance::parse)
                .toList();
        assertThat(served).noneMatch(pattern -> pattern.matches(page));
        assertThat(served).anyMatch(pattern -> pattern.matches(file));
    }

    @Test
    void theScriptOfTheLibraryIsServedAndAFileThatIsNotThereIsNotFound() throws Exception {
        String page = page();
        assertThat(Jsoup.parse(page).select("link[rel=icon]").attr("href")).isEqualTo("/favicon.svg");
        assertThat(mvc.get().uri("/favicon.svg")).hasStatusOk().hasContentType("image/svg+xml");
        assertThat(mvc.get().uri("/webjars/htmx.org/dist/htmx.min.js")).hasStatusOk();
        assertThat(mvc.get().uri("/nothing.css")).hasStatus(404);
    }
}
