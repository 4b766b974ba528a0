package org.plumbrow.account.people;

import java.time.Clock;
import java.time.ZoneOffset;
import java.util.UUID;
import org.plumbrow.account.person.Opened;
import org.plumbrow.account.person.SecondFactors;
import org.plumbrow.account.person.SecurityLog;
import org.plumbrow.web.Access;
import org.plumbrow.web.May;
import org.plumbrow.web.NotForYourRole;
import org.plumbrow.web.NotFound;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What the firm's owner does to an account as a whole. Nobody does it to their own, so that one owner always stays. */
@Service
@Transactional
class FirmPeople {

    private final JdbcClient jdbc;
    private final Access access;
    private final Opened opened;
    private final SecondFactors factors;
    private final SecurityLog log;
    private final Clock clock;

    FirmPeople(JdbcClient jdbc, Access access, Opened opened, SecondFactors factors, SecurityLog log, Clock clock) {
        this.jdbc = jdbc;
        this.access = access;
        this.opened = opened;
        this.factors = factors;
        this.log = log;
        this.clock = clock;
    }

    /** The account signs in no more; what the person did stays. */
    void end(UUID personId) {
        String name = someoneElse(personId);
        jdbc.sql("update person set ended_at = ?, version = version + 1 where id = ? and ended_at is null")
                .params(clock.instant().atOffset(ZoneOffset.UTC), personId)
                .update();
        opened.endAll(personId);
        log.write("account-ended", access.actor(), "Ended the account of " + name + ".");
    }

    void restore(UUID personId) {
        String name = someoneElse(personId);
        jdbc.sql("update person set ended_at = null, version = version + 1 where id = ?")
                .param(personId)
                .update();
        log.write("account-restored", access.actor(), "Opened the account of " + name + " again.");
    }

    void share(UUID personId, boolean owns) {
        String name = someoneElse(personId);
        jdbc.sql("update person set owns_firm = ?, version = version + 1 where id = ?")
                .params(owns, personId)
                .update();
        log.write(
                "owner-changed",
                access.actor(),
                owns ? "Made " + name + " an owner of the firm." : name + " is no owner of the firm any more.");
    }

    /** For somebody who lost both phone and recovery codes; a manager has to begin a new one at the next sign-in. */
    void endSecondFactor(UUID personId) {
        String name = someoneElse(personId);
        factors.end(personId);
        opened.endAll(personId);
        log.write("second-factor-ended", access.actor(), "Ended the second factor of " + name + ".");
    }

    /** What the person is called. */
    private String someoneElse(UUID personId) {
        access.require(May.RUN_FIRM);
        String name = jdbc.sql("select name from person where id = ?")
                .param(personId)
                .query(String.class)
                .optional()
                .orElseThrow(NotFound::new);
        if (personId.equals(access.visitor().personId())) {
            throw new NotForYourRole("Other firm owners");
        }
        return name;
    }
}
