package org.plumbrow;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.servlet.http.Cookie;
import java.net.URI;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MockMvcTester.MockMvcRequestBuilder;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/**
 * A person's browser without script: keeps cookies, reads a page, fills in its form and sends exactly what that form
 * holds, the token included. For what a request by hand cannot prove: sessions, tokens, signing in and out.
 */
public final class TestBrowser {

    private static final AtomicInteger NEXT = new AtomicInteger();

    private final MockMvcTester mvc;
    /** Each browser sits somewhere else: misses are counted by source too. */
    private final String source = "2001:db8::" + Integer.toHexString(NEXT.incrementAndGet());

    private final Map<String, Cookie> cookies = new LinkedHashMap<>();
    private Consumer<MockMvcRequestBuilder> always = request -> {};
    private MvcTestResult last;

    public TestBrowser(MockMvcTester mvc) {
        this.mvc = mvc;
    }

    /** What each request of this browser carries too. */
    public TestBrowser always(Consumer<MockMvcRequestBuilder> headers) {
        this.always = headers;
        return this;
    }

    public MvcTestResult open(String address) {
        return send(mvc.get().uri(URI.create(address)));
    }

    /** Sends the form of the last page that posts to this address, with these fields filled in. */
    public MvcTestResult submit(String action, Map<String, String> filledIn) {
        Element form = page().selectFirst("form[action='" + action + "']");
        assertThat(form).as("a form to " + action + " in: " + page().title()).isNotNull();
        Map<String, String> fields = TestPages.fields(form);
        form.select("input[name=_csrf]").forEach(token -> fields.put("_csrf", token.val()));
        fields.putAll(filledIn);
        return post(action, fields);
    }

    /** Sends these fields, whatever the last page was. */
    public MvcTestResult post(String address, Map<String, String> fields) {
        MockMvcRequestBuilder request =
                mvc.post().uri(URI.create(address)).contentType("application/x-www-form-urlencoded");
        fields.forEach(request::param);
        return send(request);
    }

    /** Goes where the last answer led. */
    public MvcTestResult follow() {
        return open(last.getResponse().getHeader("Location"));
    }

    private MvcTestResult send(MockMvcRequestBuilder request) {
        cookies.values().forEach(request::cookie);
        request.with(asked -> {
            asked.setRemoteAddr(source);
            return asked;
        });
        always.accept(request);
        last = request.exchange();
        for (Cookie cookie : last.getResponse().getCookies()) {
            if (cookie.getMaxAge() == 0) {
                cookies.remove(cookie.getName());
            } else {
                cookies.put(cookie.getName(), cookie);
            }
        }
        return last;
    }

    public Document page() {
        return TestPages.read(last);
    }

    public String cookie(String name) {
        Cookie cookie = cookies.get(name);
        return cookie == null ? null : cookie.getValue();
    }

    public void plant(String name, String value) {
        cookies.put(name, new Cookie(name, value));
    }

    public void lose(String name) {
        cookies.remove(name);
    }

    public MvcTestResult signIn(String email, String password) {
        open("/sign-in");
        return submit("/sign-in", Map.of("email", email, "password", password));
    }
}
