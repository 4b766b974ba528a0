package org.plumbrow.branch.days;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.branch.BranchSettings;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** Days off that crews work, as a manager writes them. The tests' day is Monday, March 1, 2027. */
@PlumbrowTest
class WorkedDayPagesTest {

    private static final String HERE = "/settings/days/worked";
    private static final LocalDate SATURDAY = LocalDate.of(2027, 3, 6);

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    BranchSettings settings;

    @Autowired
    WorkedDays days;

    private TestBranch branch;

    @BeforeEach
    void aBranch() {
        branch = world.branch();
    }

    private MvcTestResult write(String day, String why) {
        return pages.post(branch.manager(), HERE, "day", day, "why", why);
    }

    private boolean isWorked(LocalDate day) {
        return world.as(
                branch.manager(), () -> settings.facts(branch.id()).workDays().isWorking(day));
    }

    private static String atTheDay(MvcTestResult answer) {
        assertThat(answer).hasStatus(422);
        Document page = TestPages.read(answer);
        assertThat(page.select("#why").val()).as("what was typed").isEqualTo("catching up");
        return page.select(".field.bad .wrong").text();
    }

    @Test
    void crewsWorkOnASaturdayOfficesDoNot() {
        assertThat(pages.page(branch.manager(), HERE).select("h1").text()).isEqualTo("No day off is worked");
        assertThat(write("2027-03-06", "catching up")).hasStatus3xxRedirection();
        assertThat(pages.page(branch.manager(), HERE).select("tbody tr").text()).contains("Mar 6", "catching up");
        assertThat(isWorked(SATURDAY)).isTrue();
        assertThat(world.as(
                        branch.manager(),
                        () -> settings.facts(branch.id()).calendar().isWorking(SATURDAY)))
                .isFalse();
    }

    @Test
    void aDayThatCannotBeWorkedIsRefusedAtItsField() {
        assertThat(atTheDay(write("2027-02-27", "catching up"))).contains("from today on");
        assertThat(atTheDay(write("2029-03-03", "catching up"))).contains("within two years");
        assertThat(atTheDay(write("", "catching up"))).contains("Choose the day that is worked");
        pages.post(
                branch.manager(), "/settings/days/closed", Map.of("firstDay", "2027-03-13", "reason", "stock-taking"));
        assertThat(atTheDay(write("2027-03-13", "catching up"))).contains("is closed: stock-taking");
    }

    @Test
    void aDayThatIsWorkedAlreadyStaysAsItIs() {
        write("2027-03-06", "catching up");
        assertThat(write("2027-03-06", "once more")).hasStatus3xxRedirection();
        List<WorkedDays.Worked> all =
                world.as(branch.manager(), () -> days.since(branch.id(), LocalDate.of(2027, 3, 1)));
        assertThat(all).containsExactly(new WorkedDays.Worked(SATURDAY, "catching up"));
        assertThat(write("2027-03-03", "a Wednesday")).hasStatus3xxRedirection();
        assertThat(world.as(branch.manager(), () -> days.since(branch.id(), LocalDate.of(2027, 3, 1))))
                .hasSize(1);
    }

    @Test
    void whatIsTakenOffCanBeTakenBackWithItsReason() {
        write("2027-03-06", "catching up");
        MvcTestResult off = pages.post(branch.manager(), HERE + "/off", "day", "2027-03-06");
        assertThat(off).hasStatus3xxRedirection();
        assertThat(isWorked(SATURDAY)).isFalse();
        String undo = String.valueOf(off.getMvcResult().getFlashMap().get("undoAction"));
        assertThat(pages.post(branch.manager(), URLDecoder.decode(undo, StandardCharsets.UTF_8)))
                .hasStatus3xxRedirection();
        assertThat(pages.page(branch.manager(), HERE).select("tbody tr").text()).contains("Mar 6", "catching up");
        pages.post(branch.manager(), HERE + "/off", "day", "2027-03-06");
        MvcTestResult again = pages.post(branch.manager(), HERE + "/off", "day", "2027-03-06");
        assertThat(again.getMvcResult().getFlashMap().get("doneSentence"))
                .asString()
                .contains("off already");
    }
}
