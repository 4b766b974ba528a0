package org.plumbrow.web.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestClock;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.database.BranchWall;
import org.plumbrow.database.Ids;
import org.plumbrow.web.LinkEnded;
import org.plumbrow.web.MaskedPath;
import org.plumbrow.web.TooManyVisits;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

@PlumbrowTest
class PrivateLinksTest {

    private final UUID crew = Ids.next();

    @Autowired
    PrivateLinks links;

    @Autowired
    TestWorld world;

    @Autowired
    TestClock clock;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TransactionTemplate transaction;

    @Test
    void aLinkHas160BitsAndCanBeRepeatedThoughNoRowHoldsIt() {
        TestBranch branch = world.branch();
        PrivateLink made = make(branch);
        assertThat(made.path()).matches("/c/[0-9a-hjkmnp-tv-z]{32}\\.ics");
        assertThat(world.as(branch.manager(), () -> links.live(LinkKind.CREW_FEED, crew)))
                .hasValue(made);
        String rows = BranchWall.everywhere(() -> transaction.execute(
                status -> jdbc.sql("select string_agg(l::text, ' ') from private_link l where id = ?")
                        .param(made.id())
                        .query(String.class)
                        .single()));
        assertThat(rows).doesNotContain(token(made));
    }

    @Test
    void afterARestartAPageThatOnlyReadsFindsTheSameLinks() {
        UUID link = Ids.next();
        String before = new LinkTokens(jdbc, "").token(link, 3);
        LinkTokens restarted = new LinkTokens(jdbc, "");
        TransactionTemplate reading = new TransactionTemplate(transaction.getTransactionManager());
        reading.setReadOnly(true);
        String after = reading.execute(status -> restarted.token(link, 3));
        assertThat(after).isEqualTo(before);
    }

    @Test
    void aNewLinkEndsTheOldAndAnEndedOneOpensNothing() {
        TestBranch branch = world.branch();
        PrivateLink old = make(branch);
        PrivateLink made = make(branch);
        assertThat(open(made, "198.51.100.1")).isEqualTo(crew);
        assertThatThrownBy(() -> open(old, "198.51.100.1")).isInstanceOf(LinkEnded.class);
        assertThat(world.as(branch.manager(), () -> links.end(LinkKind.CREW_FEED, crew)))
                .isTrue();
        assertThatThrownBy(() -> open(made, "198.51.100.1")).isInstanceOf(LinkEnded.class);
    }

    @Test
    void aVisitSeesTheRowsOfItsBranchOnly() {
        PrivateLink made = make(world.branch());
        UUID other = make(world.branch(), Ids.next()).id();
        Long seen = links.visit(
                LinkKind.CREW_FEED,
                token(made),
                "198.51.100.2",
                link -> transaction.execute(status -> jdbc.sql("select count(*) from private_link where id in (?, ?)")
                        .params(link.id(), other)
                        .query(Long.class)
                        .single()));
        assertThat(seen).isEqualTo(1);
    }

    @Test
    void theSixtyFirstVisitInAMinuteIsTooMany() {
        PrivateLink made = make(world.branch());
        for (int visit = 0; visit < 60; visit++) {
            open(made, "198.51.100.3");
        }
        assertThatThrownBy(() -> open(made, "198.51.100.3")).isInstanceOf(TooManyVisits.class);
        clock.pass(Duration.ofMinutes(1));
        assertThat(open(made, "198.51.100.3")).isEqualTo(crew);
    }

    @Test
    void afterThirtyMissesASourceOpensNothingForTheRestOfTenMinutes() {
        PrivateLink made = make(world.branch());
        for (int guess = 0; guess < 30; guess++) {
            assertThatThrownBy(() -> links.visit(LinkKind.CUSTOMER, "guess", "203.0.113.9", link -> link))
                    .isInstanceOf(LinkEnded.class);
        }
        assertThatThrownBy(() -> open(made, "203.0.113.9")).isInstanceOf(TooManyVisits.class);
        assertThat(open(made, "203.0.113.10")).isEqualTo(crew);
        clock.pass(Duration.ofMinutes(10));
        assertThat(open(made, "203.0.113.9")).isEqualTo(crew);
    }

    @Test
    void eachVisitRenewsTheLinkForThirteenMonths() {
        PrivateLink made = make(world.branch());
        clock.pass(Duration.ofDays(390));
        open(made, "198.51.100.4");
        clock.pass(Duration.ofDays(390));
        open(made, "198.51.100.4");
        clock.pass(Duration.ofDays(400));
        assertThatThrownBy(() -> open(made, "198.51.100.4")).isInstanceOf(LinkEnded.class);
    }

    @Test
    void aLogNeverHoldsTheSecretPartOfAnAddress() {
        assertThat(MaskedPath.of("/c/abcdef.ics")).isEqualTo("/c/…");
        assertThat(MaskedPath.of("/s/abcdef/answer")).isEqualTo("/s/…/answer");
        assertThat(MaskedPath.of("/crews/7/week")).isEqualTo("/crews/7/week");
    }

    private PrivateLink make(TestBranch branch) {
        return make(branch, crew);
    }

    private PrivateLink make(TestBranch branch, UUID subject) {
        return world.as(
                branch.manager(),
                () -> links.make(
                        LinkKind.CREW_FEED,
                        branch.id(),
                        subject,
                        branch.manager().actor()));
    }

    private UUID open(PrivateLink link, String source) {
        return links.visit(LinkKind.CREW_FEED, token(link), source, PrivateLink::subjectId);
    }

    private static String token(PrivateLink link) {
        return link.path().replaceAll("^/./|\\.ics$", "");
    }
}
