package org.plumbrow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import java.io.UnsupportedEncodingException;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.plumbrow.web.Visitor;
import org.springframework.context.annotation.Lazy;
import org.springframework.stereotype.Component;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** What somebody who is signed in gets from an address and sends to it. Sessions and tokens: {@link TestBrowser}. */
@Lazy
@Component
public class TestPages {

    private final MockMvcTester mvc;
    private final TestWorld world;

    TestPages(MockMvcTester mvc, TestWorld world) {
        this.mvc = mvc;
        this.world = world;
    }

    public MvcTestResult get(Visitor who, String address) {
        return mvc.get().uri(address).with(world.signedIn(who)).exchange();
    }

    /** A page that is there: one heading, and no style of its own. */
    public Document page(Visitor who, String address) {
        MvcTestResult answer = get(who, address);
        assertThat(answer).as(address).hasStatusOk();
        Document page = read(answer);
        assertThat(page.select("h1")).as(address).hasSize(1);
        assertThat(page.select("[style]")).as(address).isEmpty();
        return page;
    }

    public MvcTestResult post(Visitor who, String address, Map<String, String> fields) {
        var request = mvc.post().uri(address).with(world.signedIn(who)).with(csrf());
        fields.forEach(request::param);
        return request.exchange();
    }

    /** @param fields name, value, name, value … */
    public MvcTestResult post(Visitor who, String address, String... fields) {
        Map<String, String> typed = new LinkedHashMap<>();
        for (int at = 0; at < fields.length; at += 2) {
            typed.put(fields[at], fields[at + 1]);
        }
        return post(who, address, typed);
    }

    public static Document read(MvcTestResult answer) {
        try {
            return Jsoup.parse(answer.getResponse().getContentAsString());
        } catch (UnsupportedEncodingException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Every field that a form would send, as the page has it; the token left out. */
    public static Map<String, String> fields(Element form) {
        Map<String, String> fields = new LinkedHashMap<>();
        form.select("input[name], textarea[name], select[name]").forEach(field -> {
            boolean unticked = field.attr("type").matches("checkbox|radio") && !field.hasAttr("checked");
            if (!unticked && !field.attr("type").equals("file")) {
                fields.put(field.attr("name"), field.tagName().equals("select") ? chosen(field) : field.val());
            }
        });
        fields.remove("_csrf");
        return fields;
    }

    private static String chosen(Element select) {
        Element selected = select.selectFirst("option[selected]");
        Element option = selected == null ? select.selectFirst("option") : selected;
        return option == null ? "" : option.val();
    }
}
