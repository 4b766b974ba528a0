package org.plumbrow.account.person;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import org.plumbrow.database.Ids;
import org.plumbrow.web.Actor;
import org.plumbrow.web.Paging;
import org.plumbrow.web.SecurityEvent;
import org.springframework.context.event.EventListener;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.web.context.request.RequestContextHolder;
import org.springframework.web.context.request.ServletRequestAttributes;

/** Security events: written in the transaction of what happened, changed by nobody, gone after 24 months. */
@Service
@Transactional
public class SecurityLog {

    private final JdbcClient jdbc;
    private final Clock clock;

    SecurityLog(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** One line of the log, as its page shows it. */
    public record Line(UUID id, Instant at, String kind, String who, String sentence, String source) {}

    @EventListener
    public void write(SecurityEvent event) {
        String source = event.source();
        jdbc.sql("""
                        insert into security_event (id, at, kind, person_id, who, sentence, source)
                        values (?, ?, ?, ?, ?, ?, ?)
                        """)
                .params(
                        Ids.next(),
                        clock.instant().atOffset(ZoneOffset.UTC),
                        event.kind(),
                        event.by().personId(),
                        event.by().name(),
                        event.sentence(),
                        source == null ? sourceOfRequest() : source)
                .update();
    }

    public void write(String kind, Actor by, String sentence) {
        write(SecurityEvent.of(kind, by, sentence));
    }

    @Transactional(readOnly = true)
    public long size() {
        return jdbc.sql("select count(*) from security_event").query(Long.class).single();
    }

    @Transactional(readOnly = true)
    public List<Line> lines(Paging page) {
        return jdbc.sql("""
                        select id, at, kind, who, sentence, source from security_event
                         order by at desc, id desc limit :rows offset :from
                        """)
                .param("rows", page.size())
                .param("from", page.offset())
                .query(Line.class)
                .list();
    }

    /** @return how many lines went */
    int forgetOld() {
        return jdbc.sql("delete from security_event where at < now() - interval '24 months'")
                .update();
    }

    private static String sourceOfRequest() {
        return RequestContextHolder.getRequestAttributes() instanceof ServletRequestAttributes asked
                ? asked.getRequest().getRemoteAddr()
                : "";
    }
}
