package org.plumbrow.account.person;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.database.Ids;
import org.plumbrow.web.Actor;
import org.plumbrow.web.SecurityEvent;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

@PlumbrowTest
class SecurityLogTest {

    @Autowired
    JdbcClient jdbc;

    @Autowired
    ApplicationEventPublisher events;

    @Autowired
    TransactionTemplate transaction;

    @Autowired
    SecurityLog log;

    private final UUID person = Ids.next();

    @Test
    void whatARoomTellsIsWrittenInItsOwnTransaction() {
        transaction.executeWithoutResult(status -> {
            events.publishEvent(SecurityEvent.of("link-ended", new Actor(person, "Ines"), "Ended a link."));
            assertThat(lines()).isEqualTo(1);
            status.setRollbackOnly();
        });
        assertThat(lines()).isZero();
    }

    @Test
    void nobodyChangesOrDeletesALine() {
        log.write("link-ended", new Actor(person, "Ines"), "Ended a link.");
        assertThatThrownBy(() -> jdbc.sql("update security_event set sentence = 'No.' where person_id = ?")
                        .param(person)
                        .update())
                .isInstanceOf(DataIntegrityViolationException.class);
        assertThatThrownBy(() -> jdbc.sql(
                                "delete from security_event where person_id = ? and at > now() - interval '24 months'")
                        .param(person)
                        .update())
                .isInstanceOf(DataIntegrityViolationException.class);
        assertThatThrownBy(() -> jdbc.sql("truncate security_event").update())
                .isInstanceOf(DataIntegrityViolationException.class);
        assertThat(lines()).isEqualTo(1);
    }

    @Test
    void aLineMayGoAfterTwoYears() {
        UUID id = Ids.next();
        jdbc.sql("""
                        insert into security_event (id, at, kind, person_id, who, sentence, source)
                        values (?, now() - interval '25 months', 'signed-in', ?, 'Ines', 'Signed in.', '')
                        """).params(id, person).update();
        log.forgetOld();
        assertThat(lines()).isZero();
    }

    private long lines() {
        return jdbc.sql("select count(*) from security_event where person_id = ?")
                .param(person)
                .query(Long.class)
                .single();
    }
}
