package org.plumbrow.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.Timeout;
import org.plumbrow.database.BranchWall;
import org.plumbrow.demo.LoadedDemo;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.config.BeanPostProcessor;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Bean;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Three sites of the demo on their way from what is still waited for to a finished day without power: on the pages, by
 * the people whose work it is, with a phone that loses its signal while the power is off. It has a demo of its own, as
 * the days pass in it; they never go back, so the walks have an order.
 */
@LoadedDemo
@DirtiesContext
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
@Timeout(value = 6, unit = TimeUnit.MINUTES)
class CutoverDayWalkTest {

    @TestConfiguration(proxyBeanMethods = false)
    static class Days {
        @Bean
        static BeanPostProcessor walkedDays() {
            return WalkedDays.beforeTheHouses();
        }
    }

    @DynamicPropertySource
    static void aDemoOfItsOwn(DynamicPropertyRegistry properties) {
        OwnDemo.in("demo-walk", properties);
    }

    @LocalServerPort
    int port;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TransactionTemplate transaction;

    private BrowserContext office;
    private OfficeDesk desk;
    private UUID project;
    private String manager;

    @AfterEach
    void leave() {
        if (office != null) {
            office.close();
        }
    }

    @Test
    @Order(1)
    void aPoultryFarmWithItsArrayOnTheGround() {
        begin("Gorse Hill Poultry", "tamsin");
        assertThat(desk.receiveAll()).isPositive();
        LocalDateTime hour = booked();
        dayBefore(hour);
        desk.generatorRan();
        desk.everythingIsReady("Tamsin");
        try (BrowserContext phone = onTheDay(hour)) {
            DayPhone day = new DayPhone(phone, project.toString(), "Tamsin", "Casimir");
            day.open(hour.toLocalTime().plusHours(5), "The houses must not warm up in the afternoon.");
            withTheNetworkCut(day);
            finished(day);
        }
        passed();
    }

    /** On the first day a lug shears: everything is put back, and a new day is agreed. */
    @Test
    @Order(2)
    void aDairyWithATankWhoseFirstDayIsReversed() {
        begin("Copse End Dairy", "tamsin");
        assertThat(desk.receiveAll()).isPositive();
        LocalDateTime first = agreed("VE-730118");
        dayBefore(first);
        desk.everythingIsReady("Tamsin");
        try (BrowserContext phone = onTheDay(first)) {
            reversed(new DayPhone(phone, project.toString(), "Tamsin", "Hanne"), first);
        }
        oneMoreCrewOfElectricians();
        signIn();
        LocalDateTime second = agreed("VE-730245");
        assertThat(second).isAfter(first);
        dayBefore(second);
        desk.everythingIsReady("Tamsin");
        try (BrowserContext phone = onTheDay(second)) {
            DayPhone day = new DayPhone(phone, project.toString(), "Tamsin", "Hanne");
            day.open(LocalTime.of(16, 0), "The cows are milked at half past four.");
            withTheNetworkCut(day);
            finished(day);
        }
        passed();
    }

    @Test
    @Order(3)
    void aSchoolWithItsArrayOnTheRoof() {
        begin("Quillback School", "wim");
        assertThat(desk.receiveAll()).isPositive();
        desk.passGate("installed");
        Optional<LocalDate> free =
                desk.findsAnHour() ? Optional.empty() : Optional.of(desk.askTheCustomerForADay("teachers' day"));
        LocalDateTime hour = agreed("MP-730301");
        assertThat(hour.toLocalDate()).isEqualTo(free.orElse(hour.toLocalDate()));
        dayBefore(hour);
        desk.everythingIsReady("Wim");
        try (BrowserContext phone = onTheDay(hour)) {
            DayPhone day = new DayPhone(phone, project.toString(), "Wim", "Ottilie");
            day.open(hour.toLocalTime().plusHours(5), "The kitchen cooks at noon.");
            withTheNetworkCut(day);
            finished(day);
        }
        passed();
    }

    private LocalDateTime agreed(String number) {
        LocalDateTime hour = desk.bookTheBestHour();
        desk.bothAgree(number);
        assertThat(booked()).isEqualTo(hour);
        return hour;
    }

    /** Without signal, in the middle of the connections. */
    private void reversed(DayPhone day, LocalDateTime hour) {
        day.open(hour.toLocalTime().plusHours(5), "The cows are milked at half past four.");
        day.upTo("steps/6/");
        day.cutTheNetwork();
        long before = entries();
        day.upTo("steps/7/");
        day.reverse();
        assertThat(entries()).isEqualTo(before);
        day.signalIsBack();
        day.because("A lug sheared, and there is no second one on the truck.");
        day.close();
        assertThat(one("select outcome from day_log where project_id = ?", String.class))
                .isEqualTo("REVERSED");
        assertThat(all(
                        "select e.kind from day_log_entry e join day_log l on l.id = e.day_log_id where l.project_id = ? and e.kind in ('REVERSE', 'POWER_ON')",
                        String.class))
                .containsExactlyInAnyOrder("REVERSE", "POWER_ON");
    }

    /** What the ranking asks for where every electrician is elsewhere in the weeks that are left. */
    private void oneMoreCrewOfElectricians() {
        leave();
        office = new Visits(port).of("ines");
        WalkedDays.begin(office);
        Page page = office.newPage();
        page.navigate("/crews/new");
        page.fill("#name", "Crew 9");
        page.fill("#size", "3");
        page.fill("#electricalPeople", "2");
        page.check("input[name=skills][value=ELECTRICIAN]");
        page.fill("#from", WalkedDays.today().toString());
        page.click("main form button");
        assertThat(page.locator("main")).containsText("Crew 9");
    }

    private void begin(String name, String manager) {
        project = BranchWall.everywhere(
                () -> transaction.execute(status -> jdbc.sql("select id from project where name = ?")
                        .param(name)
                        .query(UUID.class)
                        .single()));
        this.manager = manager;
        signIn();
    }

    /** Anew after days have passed: a visit ends with its day. */
    private void signIn() {
        leave();
        office = new Visits(port).of(manager);
        WalkedDays.begin(office);
        Page page = office.newPage();
        page.setViewportSize(PageChecks.PHONE, 844);
        desk = new OfficeDesk(page, project.toString());
    }

    private LocalDateTime booked() {
        return one(
                "select day + start_time from outage_window where project_id = ? and state = 'NOTICE_GIVEN'",
                LocalDateTime.class);
    }

    private void dayBefore(LocalDateTime hour) {
        WalkedDays.to(hour.toLocalDate().minusDays(1).atTime(14, 0));
        signIn();
    }

    private BrowserContext onTheDay(LocalDateTime hour) {
        WalkedDays.to(hour.minusHours(1));
        return new Visits(port).of("sil");
    }

    /** The power is off when the signal goes; it is back before the power is. */
    private void withTheNetworkCut(DayPhone day) {
        day.upTo("steps/5/");
        day.cutTheNetwork();
        long before = entries();
        day.upTo("steps/7/");
        day.reload();
        day.upTo("holds/H3/");
        assertThat(day.waiting()).isGreaterThan(3);
        assertThat(entries()).as("nothing has reached the server").isEqualTo(before);
        day.signalIsBack();
        assertThat(done("5", "6", "7", "8")).containsExactly("5 1", "6 1", "7 1", "8 1");
        assertThat(signed("H2")).isEqualTo(1);
    }

    private void finished(DayPhone day) {
        day.toTheEnd();
        day.close();
        int minutes = minutesWithoutPower();
        assertThat(minutes).isBetween(30, 180);
        assertThat(day.page().locator("main .lead")).containsText(minutes + " min");
        assertThat(day.page().locator("main a[href*='/outage/report/']")).isVisible();
        assertThat(done("1", "4", "10", "13", "14")).containsExactly("1 1", "10 1", "13 1", "14 1", "4 1");
    }

    /** The report can be opened, and the gate after the day. */
    private void passed() {
        signIn();
        desk.open("/outage");
        String window = one(
                        "select window_id from day_log where project_id = ? order by opened_at desc limit 1",
                        UUID.class)
                .toString();
        desk.page()
                .locator("main a[href*='/outage/report/" + window + "']")
                .first()
                .click();
        desk.page().waitForLoadState();
        assertThat(desk.page().locator("main")).containsText(minutesWithoutPower() + " min");
        for (String reader : List.of("utility", "customer")) {
            APIResponse paper =
                    office.request().get("/projects/" + project + "/outage/report/" + window + "/" + reader);
            assertThat(paper.headers().get("content-type")).as(reader).startsWith("application/pdf");
        }
        desk.passGate("cutover");
        assertThat(one("select stage from project where id = ?", String.class)).isEqualTo("CUTOVER");
    }

    private long entries() {
        return one(
                "select count(*) from day_log_entry e join day_log l on l.id = e.day_log_id where l.project_id = ?",
                Long.class);
    }

    /** Step and how often it is done in the log, of the newest log. */
    private List<String> done(String... steps) {
        return all("""
                select e.step || ' ' || count(*) from day_log_entry e where e.kind = 'DONE' and e.day_log_id =
                    (select id from day_log where project_id = ? order by opened_at desc limit 1)
                group by e.step order by e.step
                """, String.class).stream()
                .filter(line -> List.of(steps).contains(line.split(" ")[0]))
                .toList();
    }

    private long signed(String hold) {
        return all("""
                select s.hold from day_log_signature s where s.day_log_id =
                    (select id from day_log where project_id = ? order by opened_at desc limit 1)
                """, String.class).stream().filter(hold::equals).count();
    }

    /** From the server's rows: the tap of step 4 to the last signature at H5. */
    private int minutesWithoutPower() {
        return one("""
                select floor(extract(epoch from max(happened_at) filter (where step = 'H5' and kind = 'SIGNED')
                    - min(happened_at) filter (where step = '4' and kind = 'DONE')) / 60)::int
                from day_log_entry where day_log_id =
                    (select id from day_log where project_id = ? order by opened_at desc limit 1)
                """, Integer.class);
    }

    private <T> T one(String sql, Class<T> type) {
        return BranchWall.everywhere(() -> transaction.execute(
                status -> jdbc.sql(sql).param(project).query(type).single()));
    }

    private <T> List<T> all(String sql, Class<T> type) {
        return BranchWall.everywhere(() -> transaction.execute(
                status -> jdbc.sql(sql).param(project).query(type).list()));
    }
}
