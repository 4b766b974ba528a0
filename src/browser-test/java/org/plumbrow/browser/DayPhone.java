package org.plumbrow.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.PlaywrightException;
import com.microsoft.playwright.TimeoutError;
import java.time.LocalTime;
import java.util.Objects;
import java.util.regex.Pattern;

/** The phone of a crew lead on the day: taps whatever the log asks for, with readings as usual. */
final class DayPhone {

    private static final String ASKED = """
            () => {
              const form = [...document.querySelectorAll('.now form[data-tap]')].find(one => one.offsetParent !== null);
              if (!form) return '';
              const part = form.elements.part;
              return form.getAttribute('action').split('/day-log/')[1] + (part ? ' ' + part.value : '');
            }
            """;
    private static final String LOADED =
            "() => document.readyState !== 'complete' || document.querySelector('main').inert" + " ? 'not yet' : ("
                    + ASKED + ")()";
    private static final String SENT =
            "() => document.querySelector('#phone-waiting li') ? 'not yet' : (" + LOADED + ")()";
    private static final String RENEWED =
            "() => [...document.querySelectorAll('.now[data-later]')].some(one => one.offsetParent !== null)"
                    + " ? 'not yet' : (" + SENT + ")()";
    private static final String WHY = "section[aria-labelledby=why-reversed]";
    private static final int MINUTES_A_STEP = 6;
    private static final int SOON_MS = 6_000;
    private static final int IN_THE_END_MS = 20_000;

    private final BrowserContext phone;
    private final Page page;
    private final String log;
    private final String inCharge;
    private final String customer;
    private String service = "";
    private boolean offline;

    DayPhone(BrowserContext phone, String project, String inCharge, String customer) {
        this.phone = phone;
        this.inCharge = inCharge;
        this.customer = customer;
        this.log = "/projects/" + project + "/day-log";
        WalkedDays.begin(phone);
        page = phone.newPage();
        page.setDefaultTimeout(12_000);
        page.setViewportSize(PageChecks.PHONE, 844);
    }

    Page page() {
        return page;
    }

    void open(LocalTime neededBy, String why) {
        page.navigate(log);
        Locator chosen = page.locator("input[name=service]:checked");
        service = chosen.count() > 0 ? chosen.inputValue() : "WYE_208_120";
        page.check("input[name=service][value=" + service + "]");
        page.fill("#r-personInCharge", inCharge);
        page.locator("#open-form button").first().click();
        assertThat(page.locator("#step-form")).isVisible();
        page.navigate(log + "/reversal-time");
        page.fill("#r-neededBy", neededBy.toString());
        page.fill("#r-reason", why);
        page.click("main .acts button");
        assertThat(page).hasURL(Pattern.compile(".*/day-log$"));
        assertThat(page.locator("#phone-pages")).containsText("The log is on this phone");
    }

    String asked() {
        return Objects.toString(page.evaluate(ASKED));
    }

    /** Tap by tap, until this is what is asked for next. */
    void upTo(String next) {
        for (String asked = asked(); !asked.startsWith(next); asked = asked()) {
            assertThat(asked)
                    .as("what the log asks for before %s: %s", next, page.innerText("main"))
                    .isNotEmpty();
            tap();
        }
    }

    /** Every step that is left. */
    void toTheEnd() {
        while (!asked().isEmpty()) {
            tap();
        }
        assertThat(page.locator(".thumbs .done")).hasText("Close the log");
    }

    private void tap() {
        WalkedDays.pass(MINUTES_A_STEP);
        page.evaluate(WalkedDays.onThePhone());
        String asked = asked();
        fillAndTap(asked);
        if (!isBeyond(asked, SOON_MS)) {
            // Asked whether who signs is there.
            fillAndTap(asked);
            assertThat(isBeyond(asked, IN_THE_END_MS))
                    .as("the log stays at %s: %s", asked, page.innerText("main"))
                    .isTrue();
        }
    }

    private void fillAndTap(String asked) {
        Locator form = page.locator(".now:visible form[data-tap]:visible").first();
        // Asked about somebody who signs and is not on the list of who is there.
        Locator here = form.locator("input[name=isHere]:visible");
        if (here.count() > 0) {
            here.check();
            page.locator(".thumbs .done").click();
            return;
        }
        form.locator("input[name^='r.']:visible").all().forEach(this::read);
        write(form, "who", "technician, utility");
        write(form, "name", signer(asked));
        write(form, "trade", "as agreed");
        Locator own = form.locator("button.done:visible");
        (own.count() > 0 ? own : page.locator(".thumbs .done")).first().click();
    }

    private boolean isBeyond(String asked, int withinMs) {
        try {
            page.waitForCondition(() -> isBeyond(asked), new Page.WaitForConditionOptions().setTimeout(withinMs));
            return true;
        } catch (TimeoutError stays) {
            return false;
        }
    }

    /** With signal a tap is sent at once, and the page comes anew from the server. */
    private boolean isBeyond(String asked) {
        try {
            // In one look: between two, the tap may go out and the page come anew.
            String now = Objects.toString(page.evaluate(offline ? LOADED : RENEWED));
            return !now.equals("not yet") && !now.equals(asked);
        } catch (PlaywrightException onItsWay) {
            return false;
        }
    }

    private String signer(String asked) {
        if (asked.endsWith("CUSTOMER")) {
            return customer;
        }
        if (asked.endsWith("PERSON_IN_CHARGE")) {
            return inCharge;
        }
        return asked.endsWith("SECOND_PERSON") ? "Nell" : "Sil";
    }

    private static void write(Locator form, String field, String text) {
        Locator input = form.locator("input[type=text][name=" + field + "]:visible");
        if (input.count() > 0 && input.first().inputValue().isEmpty()) {
            input.first().fill(text);
        }
    }

    private void read(Locator field) {
        String quantity = Objects.requireNonNull(field.getAttribute("name")).substring(2);
        if (Objects.equals(field.getAttribute("type"), "radio")) {
            String value = field.getAttribute("value");
            if ("ABC".equals(value) || "LOCKED_OPEN".equals(value)) {
                field.check();
            }
        } else {
            field.fill(usual(quantity));
        }
    }

    private String usual(String quantity) {
        return switch (quantity) {
            case "locks" -> "5";
            case "generator-min" -> "6";
            case "insulation" -> "550";
            case "lugs" -> "8";
            case "torque" -> "275 in·lb, tool 14";
            case "main-a" -> "140";
            case "live-before", "live-after" -> "120";
            case "A-N", "B-N", "C-N" -> service.contains("480") ? "277" : "120";
            case "A-B", "A-C", "B-C" -> service.contains("480") ? "480" : service.contains("208") ? "208" : "240";
            default -> quantity.startsWith("dead-") ? "0" : "";
        };
    }

    void cutTheNetwork() {
        assertThat(page.locator("#phone-waiting li")).hasCount(0);
        phone.setOffline(true);
        offline = true;
    }

    /** Reloaded without signal: what was tapped is still there. */
    void reload() {
        String asked = asked();
        page.reload();
        assertThat(page.locator("#phone")).containsText("not sent yet");
        page.waitForCondition(() -> asked().equals(asked));
    }

    int waiting() {
        return page.locator("#phone-waiting li").count();
    }

    void signalIsBack() {
        phone.setOffline(false);
        offline = false;
        Signal.isBack(page);
        page.waitForCondition(this::isSent);
    }

    /** All is at the server and the page has come anew. */
    private boolean isSent() {
        try {
            return !Objects.toString(page.evaluate(SENT)).equals("not yet");
        } catch (PlaywrightException onItsWay) {
            return false;
        }
    }

    void close() {
        page.click(".thumbs .done");
        assertThat(page.locator("main .lead")).containsText("Closed");
    }

    /** One tap without signal, still there after a reload; then the power is back on. */
    void reverse() {
        page.click("#reverse-now");
        assertThat(page.locator(".way")).isVisible();
        page.reload();
        assertThat(page.locator(".way")).isVisible();
        WalkedDays.pass(4 * MINUTES_A_STEP);
        page.evaluate(WalkedDays.onThePhone());
        assertThat(asked()).startsWith("steps/10/readings");
        fillAndTap(asked());
        assertThat(page.locator(".thumbs .done")).hasText("The power is back on");
        page.click(".thumbs .done");
        assertThat(page.locator(".way")).isHidden();
    }

    void because(String reason) {
        page.fill(WHY + " #r-reason", reason);
        page.click(WHY + " button");
        assertThat(page.locator(WHY)).containsText(reason);
    }
}
