package org.plumbrow.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.plumbrow.database.BranchWall;
import org.plumbrow.web.SignedIn;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import org.springframework.transaction.support.TransactionTemplate;

/** Follows the links of the demo branch as each of its people; the browser tests look at what is behind them. */
@LoadedDemo
class DemoLinksTest {

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TransactionTemplate transaction;

    @Autowired
    MockMvcTester mvc;

    private <T> T seen(Supplier<T> work) {
        return BranchWall.everywhere(() -> transaction.execute(status -> work.get()));
    }

    private List<String> texts(String sql) {
        return seen(() -> jdbc.sql(sql).query(String.class).list());
    }

    /** Follows every link from where the person lands: none is dead, none is forbidden, none fails. */
    @ParameterizedTest
    @ValueSource(strings = {"maren", "ines", "tamsin", "dov", "jory"})
    void everyLinkThatAPersonIsShownLeadsSomewhere(String name) {
        UUID person = seen(() -> jdbc.sql("select id from person where email = ?")
                .param(name + "@quillback.example")
                .query(UUID.class)
                .single());
        assertThat(new Links(new SignedIn(person)).dead()).isEmpty();
    }

    private final class Links {
        private static final int PER_PATTERN = 2;
        private final SignedIn who;
        private final Deque<String> next = new ArrayDeque<>(List.of("/", "/you"));
        private final Set<String> queued = new HashSet<>(next);
        private final Map<String, Integer> opened = new HashMap<>();
        private final List<String> dead = new ArrayList<>();

        Links(SignedIn who) {
            this.who = who;
        }

        List<String> dead() {
            while (!next.isEmpty()) {
                open(next.poll());
            }
            assertThat(opened.size()).as("kinds of pages seen").isGreaterThan(8);
            return dead;
        }

        private void open(String address) {
            if (opened.merge(pattern(address), 1, Integer::sum) > PER_PATTERN) {
                return;
            }
            MvcTestResult page = mvc.get()
                    .uri(java.net.URI.create(address))
                    .with(SecurityMockMvcRequestPostProcessors.authentication(
                            UsernamePasswordAuthenticationToken.authenticated(who, null, List.of())))
                    .exchange();
            int status = page.getResponse().getStatus();
            if (status >= 300 && status < 400) {
                queue(String.valueOf(page.getResponse().getRedirectedUrl()), address);
                return;
            }
            if (status != 200 || page.getUnresolvedException() != null) {
                dead.add(address + " answered " + status + " " + page.getUnresolvedException());
                return;
            }
            String type = String.valueOf(page.getResponse().getContentType());
            if (type.startsWith("text/html")) {
                for (Element link : Jsoup.parse(html(page)).select("a[href]")) {
                    queue(link.attr("href"), address);
                }
            }
        }

        private String html(MvcTestResult page) {
            try {
                return page.getResponse().getContentAsString(java.nio.charset.StandardCharsets.UTF_8);
            } catch (java.io.UnsupportedEncodingException impossible) {
                throw new IllegalStateException(impossible);
            }
        }

        private void queue(String link, String from) {
            String address = link.contains("#") ? link.substring(0, link.indexOf('#')) : link;
            if (address.startsWith("?")) {
                address = from.replaceAll("\\?.*", "") + address;
            }
            if (address.startsWith("/") && !address.startsWith("/webjars") && queued.add(address)) {
                next.add(address);
            }
        }

        private static String pattern(String address) {
            return address.replaceAll("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}", "*")
                    .replaceAll("/[A-Za-z0-9_-]{27,}", "/*")
                    .replaceAll("=[^&]*", "");
        }
    }
}
