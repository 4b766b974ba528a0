package org.plumbrow.notice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.Queries;
import org.plumbrow.TestClock;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.database.BranchWall;
import org.plumbrow.database.Ids;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mail.javamail.JavaMailSender;
import org.springframework.mail.javamail.JavaMailSenderImpl;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.transaction.support.TransactionTemplate;

@PlumbrowTest
class NoticeTest {

    private static final String TEXT = """
            Your power will be off on Friday, March 26, from 9:00 to 10:30 am.

            Before that: run the generator for ten minutes.
            Everything is on your page: https://jobs.firm.example/s/abc.

            You get this because the crew works at your barn <north>.
            """;

    @Autowired
    Outbox outbox;

    @Autowired
    Notices notices;

    @Autowired
    Letters letters;

    @Autowired
    TransactionTemplate transaction;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TestWorld world;

    @Autowired
    TestClock clock;

    @Autowired
    MockMvcTester mvc;

    private final GreenMail mailServer = new GreenMail(new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTP));
    private final List<Object> told = new ArrayList<>();
    private TestBranch branch;

    @BeforeEach
    void start() {
        mailServer.start();
        branch = world.branch();
    }

    @AfterEach
    void stop() {
        mailServer.stop();
    }

    static NewNotice powerOff(UUID branchId) {
        return NewNotice.ofProject(
                        NoticeKind.CUSTOMER,
                        branchId,
                        Ids.next(),
                        new NewNotice.Recipient("Ada Marsh", "ada@farm.example"),
                        "Power off Friday, March 26, 9:00–10:30 am, Sedge Hollow",
                        TEXT)
                .shortly("Power off Fri, Mar 26, 9:00-10:30 am.")
                .with(new NewNotice.CalendarPart(
                        "power-off.ics", "REQUEST", "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nEND:VCALENDAR\r\n"));
    }

    @Test
    void aNoticeOfAChangeThatDidNotHappenIsNotThere() {
        UUID id = world.as(
                branch.projectManager(),
                () -> transaction.execute(status -> {
                    status.setRollbackOnly();
                    return outbox.post(powerOff(branch.id()));
                }));
        assertThat(this.<UUID>letter(id, letter -> letter.line().id())).isNull();
        assertThatThrownBy(() -> outbox.post(powerOff(branch.id()))).hasMessageContaining("mandatory");
    }

    @Test
    void textAndHtmlSayTheSameAndTheCalendarEntryTravelsAlong() throws Exception {
        UUID id = post(powerOff(branch.id()));
        postman(serverAt(mailServer.getSmtp().getPort())).deliver(id);

        MimeMessage mail = mailServer.getReceivedMessages()[0];
        assertThat(mail.getSubject()).isEqualTo("Power off Friday, March 26, 9:00–10:30 am, Sedge Hollow");
        assertThat(mail.getMessageID()).contains(id.toString());
        assertThat(mail.getReplyTo()[0].toString())
                .contains(branch.projectManager().email());
        MimeMultipart all = (MimeMultipart) mail.getContent();
        MimeMultipart body = (MimeMultipart) all.getBodyPart(0).getContent();
        String text = (String) body.getBodyPart(0).getContent();
        var html = Jsoup.parse((String) body.getBodyPart(1).getContent());
        assertThat(words(html.body().text())).isEqualTo(words(text)).isEqualTo(words(TEXT));
        assertThat(html.select("a").eachAttr("href")).containsExactly("https://jobs.firm.example/s/abc");
        assertThat(html.select("img, script, link, style")).isEmpty();
        assertThat(body.getBodyPart(2).getContentType())
                .startsWith("text/calendar")
                .contains("method=REQUEST");
        assertThat(all.getBodyPart(1).getFileName()).isEqualTo("power-off.ics");
        assertThat(line(id).state()).isEqualTo(NoticeState.SENT);
    }

    @Test
    void twoNodesAtOnceSendItOnce() throws Exception {
        UUID id = post(powerOff(branch.id()));
        Postman postman = postman(serverAt(mailServer.getSmtp().getPort()));
        var nodes = Executors.newFixedThreadPool(2);
        CountDownLatch start = new CountDownLatch(1);
        for (int node = 0; node < 2; node++) {
            nodes.submit(() -> {
                start.await();
                postman.deliver(id);
                return id;
            });
        }
        start.countDown();
        nodes.shutdown();
        assertThat(nodes.awaitTermination(20, TimeUnit.SECONDS)).isTrue();
        assertThat(mailServer.getReceivedMessages()).hasSize(1);
    }

    @Test
    void itIsTriedFiveTimesInADayAndThenSaysWhyItDidNotLeave() {
        UUID id = post(powerOff(branch.id()));
        int deadPort = mailServer.getSmtp().getPort();
        mailServer.stop();
        Postman postman = postman(serverAt(deadPort));
        Duration[] waits = {Duration.ofMinutes(15), Duration.ofMinutes(105), Duration.ofHours(6), Duration.ofHours(16)};
        for (int i = 0; i < waits.length; i++) {
            postman.deliver(id);
            assertThat(line(id).tries()).isEqualTo(i + 1);
            assertThat(line(id).state()).isEqualTo(NoticeState.WAITING);
            clock.pass(waits[i].minusSeconds(1));
            postman.deliver(id);
            assertThat(line(id).tries()).as("not before its time").isEqualTo(i + 1);
            clock.pass(Duration.ofSeconds(1));
        }
        assertThat(Duration.between(TestClock.START, clock.instant())).isEqualTo(Duration.ofHours(24));
        postman.deliver(id);
        assertThat(line(id).state()).isEqualTo(NoticeState.NOT_SENT);
        assertThat(line(id).reason()).startsWith("The mail server did not take it: ");
        assertThat(told).singleElement().isInstanceOfSatisfying(NoticeNotSent.class, given -> {
            assertThat(given.noticeId()).isEqualTo(id);
            assertThat(given.branchId()).isEqualTo(branch.id());
        });
    }

    @Test
    void whatIsNoAddressIsNotTriedAgain() {
        UUID id = post(NewNotice.ofBranch(
                branch.id(), new NewNotice.Recipient("Ada", "ada at farm"), "Power off", "Power off on Friday."));
        postman(serverAt(mailServer.getSmtp().getPort())).deliver(id);
        assertThat(line(id).state()).isEqualTo(NoticeState.NOT_SENT);
        assertThat(line(id).reason()).isEqualTo("\"ada at farm\" is no e-mail address.");
    }

    @Test
    void withoutAMailServerItWaitsAndCanBePassedOnByHand() {
        UUID id = post(powerOff(branch.id()));
        postman(null).deliver(id);
        assertThat(line(id).tries()).isZero();

        var manager = world.signedIn(branch.manager());
        assertThat(mvc.get().uri("/outbox").with(manager))
                .hasStatusOk()
                .bodyText()
                .contains("Outbox: 1 notice waits<")
                .contains("Sedge Hollow")
                .contains("No mail server is set");
        assertThat(mvc.get().uri("/outbox/{id}", id).with(manager))
                .hasStatusOk()
                .bodyText()
                .contains("Before that: run the generator for ten minutes.")
                .contains("barn &lt;north&gt;");
        assertThat(mvc.post().uri("/outbox/{id}/passed-on", id).with(manager).with(csrf()))
                .hasRedirectedUrl("/outbox/" + id);
        assertThat(line(id).state()).isEqualTo(NoticeState.BY_HAND);
        assertThat(line(id).settledBy()).isEqualTo("Ines");
        assertThat(mvc.post().uri("/outbox/{id}/wait-again", id).with(manager).with(csrf()))
                .hasStatus3xxRedirection();
        assertThat(line(id).state()).isEqualTo(NoticeState.WAITING);
    }

    @Test
    void aMailThatLetsSomebodySignInIsReadByTheOwnerOnlyAndThatIsWrittenDown() {
        UUID id = post(NewNotice.toSignIn(
                branch.id(),
                "invitation:" + branch.id(),
                new NewNotice.Recipient("Bo", "bo@firm.example"),
                "You are invited to " + branch.code(),
                "Open https://localhost/invited/secretword"));
        assertThat(mvc.get().uri("/outbox/{id}", id).with(world.signedIn(branch.manager())))
                .hasStatus(403);
        assertThat(mvc.get().uri("/outbox").with(world.signedIn(branch.manager())))
                .bodyText()
                .doesNotContain("You are invited");
        assertThat(readings(branch.owner())).isZero();
        assertThat(mvc.get().uri("/outbox/{id}", id).with(world.signedIn(branch.owner())))
                .bodyText()
                .contains("secretword");
        assertThat(readings(branch.owner())).isEqualTo(1);

        world.as(
                branch.manager(),
                () -> transaction.executeWithoutResult(status -> outbox.blank("invitation:" + branch.id())));
        assertThat(mvc.get().uri("/outbox/{id}", id).with(world.signedIn(branch.owner())))
                .bodyText()
                .contains("The text went")
                .doesNotContain("secretword");
    }

    @Test
    void anOvertakenNoticeIsWithdrawnWhileItWaits() {
        UUID id = post(powerOff(branch.id()).about("outage:" + branch.id()));
        world.as(
                branch.manager(),
                () -> transaction.executeWithoutResult(status ->
                        assertThat(outbox.withdraw("outage:" + branch.id())).isEqualTo(1)));
        postman(serverAt(mailServer.getSmtp().getPort())).deliver(id);
        assertThat(mailServer.getReceivedMessages()).isEmpty();
        assertThat(line(id).state()).isEqualTo(NoticeState.WITHDRAWN);
    }

    @Test
    void theListTakesTheSameQueriesWithOneNoticeAndWithSixty() {
        post(powerOff(branch.id()));
        int one = queriesOfTheList();
        for (int i = 0; i < 59; i++) {
            post(powerOff(branch.id()));
        }
        assertThat(queriesOfTheList()).isEqualTo(one).isEqualTo(3);
        assertThat(mvc.get().uri("/outbox?page=2").with(world.signedIn(branch.manager())))
                .bodyText()
                .contains("51 to 60 of 60");
    }

    private int queriesOfTheList() {
        return Queries.count(() ->
                mvc.get().uri("/outbox").with(world.signedIn(branch.manager())).exchange());
    }

    private long readings(Visitor owner) {
        return jdbc.sql("select count(*) from security_event where kind = 'outbox-read' and person_id = ?")
                .param(owner.personId())
                .query(Long.class)
                .single();
    }

    private UUID post(NewNotice notice) {
        return world.as(branch.projectManager(), () -> transaction.execute(status -> outbox.post(notice)));
    }

    private NoticeLine line(UUID id) {
        return letter(id, Notices.Letter::line);
    }

    private <T> T letter(UUID id, Function<Notices.Letter, T> part) {
        return BranchWall.everywhere(
                () -> transaction.execute(status -> notices.find(id).map(part).orElse(null)));
    }

    private static String words(String text) {
        return text.replaceAll("\\s+", " ").strip();
    }

    private Postman postman(JavaMailSender server) {
        ObjectProvider<JavaMailSender> provider = new ObjectProvider<>() {
            @Override
            public JavaMailSender getObject() {
                return server;
            }

            @Override
            public JavaMailSender getIfAvailable() {
                return server;
            }
        };
        return new Postman(notices, transaction, provider, letters, told::add, clock);
    }

    private static JavaMailSender serverAt(int port) {
        JavaMailSenderImpl sender = new JavaMailSenderImpl();
        sender.setHost("127.0.0.1");
        sender.setPort(port);
        return sender;
    }
}
