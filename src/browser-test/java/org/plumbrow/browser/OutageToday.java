package org.plumbrow.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.cutover.daylog.CutoverRoad;

/** A project whose outage is today, and its day log on a phone. */
record OutageToday(TestBranch branch, UUID project) {

    static OutageToday made(Page page, TestWorld world, CutoverRoad road) {
        TestBranch branch = world.branch(whereTheDayIsYoung());
        page.navigate("/projects/new?branch=" + branch.code());
        page.fill("#name", "Orchard Lane");
        page.fill("#customer", "Marit");
        page.click("main .acts button");
        // A page that is closed while the next one comes has kept the browser waiting for ever.
        page.waitForURL(Pattern.compile(".*/projects/[0-9a-f-]{36}.*"));
        UUID project = UUID.fromString(page.url().replaceAll(".*/projects/([0-9a-f-]{36}).*", "$1"));
        road.windowOfToday(project, branch.id());
        return new OutageToday(branch, project);
    }

    /** Between six in the morning and five, whenever this runs: today's latest reversal, in the evening, still lies ahead. */
    private static ZoneId whereTheDayIsYoung() {
        return Stream.of("Pacific/Honolulu", "America/New_York", "Europe/Paris", "Asia/Tokyo")
                .map(ZoneId::of)
                .min(Comparator.comparing(zone -> Math.abs(LocalTime.now(zone).getHour() - 11)))
                .orElseThrow();
    }

    String log() {
        return "/projects/" + project + "/day-log";
    }

    /** Opens the log and says by when the power is needed. */
    void open(Page page) {
        page.navigate(log());
        page.check("input[name=service] >> nth=0");
        page.fill("#r-personInCharge", "Tamsin");
        page.click("#open-form button");
        assertThat(page.locator("#step-form")).isVisible();
        setReversalTime(page);
    }

    void setReversalTime(Page page) {
        page.navigate(log() + "/reversal-time");
        page.fill("#r-neededBy", "23:30");
        page.fill("#r-reason", "the freezer");
        page.click("main .acts button");
        assertThat(page).hasURL(Pattern.compile(".*/day-log$"));
    }

    /** The page as it is now is on the phone. */
    void keep(Page page) {
        page.navigate(log());
        assertThat(page.locator("#phone-pages")).containsText("The log is on this phone");
    }
}
