package org.plumbrow.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.Month;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.plumbrow.evidence.MadeUpPhoto;

/** What a project manager does for one project before and after the day, on the pages and nowhere else. */
record OfficeDesk(Page page, String project) {

    private static final Pattern BETWEEN = Pattern.compile("([\\d.]+) to ([\\d.]+)");
    private static final Pattern AT_LEAST = Pattern.compile("at least ([\\d.]+)");
    private static final Pattern HOUR = Pattern.compile("window=([\\d-]+)&start=([\\d:]+)");
    private static final Pattern ASK_THE_CUSTOMER =
            Pattern.compile("[^.]*[ap]m\\s+Ask the customer to do without power[^.]*\\.\\s*", Pattern.DOTALL);
    private static final Pattern MONTH_AND_DAY = Pattern.compile("([A-Z][a-z]+) (\\d+)");
    private static final int TIMES_TRIED = 4;

    void open(String below) {
        page.navigate("/projects/" + project + below);
    }

    private String text() {
        return page.locator("main").innerText();
    }

    /** The page after a tap on the main button, without a complaint. */
    private void send(String button) {
        String from = page.url();
        page.locator(button).first().click();
        page.waitForLoadState();
        assertThat(page.locator("main .wrong, main .note-trouble[role=alert]").allInnerTexts())
                .as("complaints at " + from)
                .isEmpty();
    }

    /** @return how many were still open */
    int receiveAll() {
        open("/waits");
        List<String> waits = hrefs("main table a[href*='/waits/']:not([href*='again='])");
        int open = 0;
        for (String wait : waits) {
            page.navigate(wait);
            if (page.inputValue("#receivedOn").isEmpty()) {
                open++;
                receive();
            }
        }
        return open;
    }

    private void receive() {
        page.fill("#receivedOn", WalkedDays.today().toString());
        if (Objects.toString(page.inputValue("#kind")).contains("INSPECTION")) {
            page.selectOption("#result", "PASSED");
        }
        send("main form button");
        assertThat(page).hasURL(Pattern.compile(".*/waits$"));
    }

    /** Answers whatever is missing, item by item, until nothing is; then passes. */
    void passGate(String stage) {
        Map<String, Integer> tries = new HashMap<>();
        for (List<String> missing = missing(stage); !missing.isEmpty(); missing = missing(stage)) {
            for (String item : missing) {
                page.navigate(item);
                assertThat(tries.merge(item, 1, Integer::sum))
                        .as("this item cannot be answered: %s", text())
                        .isLessThanOrEqualTo(TIMES_TRIED);
                answer(tries.get(item));
            }
        }
        page.click("main .note .acts a.button");
        send("main form button");
        assertThat(page.locator("main")).containsText("Gate passed");
    }

    private List<String> missing(String stage) {
        open("/gates/" + stage);
        return hrefs("section[aria-labelledby=missing] th[scope=row] a");
    }

    private List<String> hrefs(String links) {
        return page.locator(links).all().stream()
                .map(link -> Objects.requireNonNull(link.getAttribute("href")))
                .toList();
    }

    private boolean has(String field) {
        return page.locator(field).count() > 0;
    }

    private void answer(int place) {
        if (has("input[name=confirmed]")) {
            page.check("input[name=confirmed]");
        }
        if (has("#reading")) {
            page.fill("#reading", reading(page.innerText("#reading-hint")));
            page.fill("#label", "place " + place);
        }
        paper("input[name=photo]");
        paper("input[name=document]");
        if (has("#date")) {
            page.fill("#date", WalkedDays.today().toString());
        }
        if (has("#signerName")) {
            page.fill("#signerName", "Nell");
            page.fill("#signerTrade", "licensed electrician");
        }
        if (has("main form button:text-is('Save')")) {
            send("main form button:text-is('Save')");
        }
    }

    private void paper(String field) {
        if (has(field)) {
            page.setInputFiles(field, new FilePayload("paper.jpg", "image/jpeg", MadeUpPhoto.plain()));
        }
    }

    private static String reading(String hint) {
        Matcher between = BETWEEN.matcher(hint);
        if (between.find()) {
            return Double.toString((Double.parseDouble(between.group(1)) + Double.parseDouble(between.group(2))) / 2);
        }
        Matcher least = AT_LEAST.matcher(hint);
        if (least.find()) {
            return Double.toString(2 * Double.parseDouble(least.group(1)));
        }
        return hint.contains("In words") ? "ABC" : "275";
    }

    /** No hour fits the lessons: of what could give, what the customer alone can; they agree to it. */
    LocalDate askTheCustomerForADay(String what) {
        open("/outage/hours");
        assertThat(page.locator("h1")).hasText("No hour of the next weeks is feasible");
        String limit = page.locator("section[aria-labelledby=relax] li").allInnerTexts().stream()
                .filter(line -> ASK_THE_CUSTOMER.matcher(line).matches())
                .findFirst()
                .orElseThrow(() -> new AssertionError("nothing to ask the customer: " + text()));
        LocalDate day = dayOf(limit);
        open("/without-power/times");
        page.locator("input[name$='[mark]']").last().fill(what);
        page.locator("select[name$='[what]']").last().selectOption("CLOSED");
        page.locator("input[name$='[date]']").last().fill(day.toString());
        page.locator("input[name$='[lastDate]']").last().fill(day.toString());
        send("main form button");
        return day;
    }

    /** "Tuesday, January 19", the next there is. */
    private static LocalDate dayOf(String words) {
        Matcher day = MONTH_AND_DAY.matcher(words);
        assertThat(day.find()).isTrue();
        LocalDate today = WalkedDays.today();
        LocalDate said = LocalDate.of(
                today.getYear(), Month.valueOf(day.group(1).toUpperCase(Locale.ROOT)), Integer.parseInt(day.group(2)));
        return said.isBefore(today) ? said.plusYears(1) : said;
    }

    /** Beside lessons an hour is free in a recess only, and then not for every crew. */
    boolean findsAnHour() {
        open("/outage/hours");
        return page.locator("main a[href*='/outage/choose?window=']").count() > 0;
    }

    /** The first hour of the ranking, booked as it stands there. */
    LocalDateTime bookTheBestHour() {
        open("/outage/hours");
        assertThat(page.locator("main a[href*='/outage/choose?window=']").count())
                .as("an hour to choose: %s", text())
                .isPositive();
        Locator choose = page.locator("main a[href*='/outage/choose?window=']").first();
        Matcher hour = HOUR.matcher(Objects.requireNonNull(choose.getAttribute("href")));
        assertThat(hour.find()).isTrue();
        choose.click();
        assertThat(page.locator("#day")).hasValue(hour.group(1));
        send("button[value=book]");
        assertThat(page.locator("main")).containsText("notice");
        return LocalDate.parse(hour.group(1)).atTime(LocalTime.parse(hour.group(2)));
    }

    /** Utility and customer are told and say yes. */
    void bothAgree(String number) {
        open("/outage/utility");
        page.fill("#how", "by letter");
        page.fill("#toldOn", WalkedDays.today().toString());
        page.fill("#number", number);
        send("main form button");
        open("/outage/customer");
        page.fill("#how", "by telephone");
        page.fill("#toldOn", WalkedDays.today().toString());
        page.locator("input[name=answer]").first().check();
        send("main form button");
        open("/outage");
        assertThat(page.locator("main")).containsText(number);
    }

    /** The generator ran today as the farm runs. */
    void generatorRan() {
        open("/without-power/generator");
        page.fill("input[name$='[lastRun]']", WalkedDays.today().toString());
        send("main form button");
    }

    /** The steps of the day as the frozen drawing has them, where there is one. */
    private void stepsFromTheDrawing() {
        open("/outage/steps");
        if (has("main form[action$='/outage/steps'] button")) {
            send("main form[action$='/outage/steps'] button");
        }
    }

    /** Everything that somebody has to say is said, and a person says go. */
    void everythingIsReady(String person) {
        stepsFromTheDrawing();
        open("/outage/readiness");
        for (String item : hrefs("section[aria-labelledby=people] a[href*='/readiness/']")) {
            page.navigate(item);
            page.check("input[name=state][value=READY]");
            page.fill("#note", "looked at");
            send("main form button");
        }
        open("/outage/readiness");
        page.check("input[name=decision][value=GO]");
        page.fill("#person", person);
        send("section[aria-labelledby=go] button");
        open("/outage/readiness");
        assertThat(page.innerText("h1")).as(text()).startsWith("Go");
    }
}
