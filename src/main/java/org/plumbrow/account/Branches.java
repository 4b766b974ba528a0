package org.plumbrow.account;

import java.time.Clock;
import java.time.ZoneId;
import java.util.UUID;
import org.plumbrow.database.BranchWall;
import org.plumbrow.database.Ids;
import org.plumbrow.web.Actor;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** Opens branches: the first one by the first-run page, further ones by the firm's owner. Asks nobody who may. */
@Service
public class Branches {

    private final JdbcClient jdbc;
    private final TransactionTemplate transaction;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    Branches(JdbcClient jdbc, TransactionTemplate transaction, ApplicationEventPublisher events, Clock clock) {
        this.jdbc = jdbc;
        this.transaction = transaction;
        this.events = events;
        this.clock = clock;
    }

    /**
     * The branch with everything the rooms give it, or nothing at all. In a transaction of one's own, open it with the
     * scope {@link BranchWall#everywhere}: a narrower one does not hold the new branch yet.
     *
     * @param code two to six capital letters, unique in the firm
     * @throws org.springframework.dao.DataIntegrityViolationException constraint {@code branch_code_taken}
     */
    public UUID open(String code, String name, ZoneId zone, Actor by) {
        UUID id = Ids.next();
        BranchWall.within(
                id,
                () -> transaction.execute(status -> {
                    jdbc.sql("insert into branch (id, code, name, zone) values (?, ?, ?, ?)")
                            .params(id, code, name.strip(), zone.getId())
                            .update();
                    events.publishEvent(new BranchOpened(id, by, clock.instant()));
                    return id;
                }));
        return id;
    }
}
