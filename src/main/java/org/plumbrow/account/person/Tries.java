package org.plumbrow.account.person;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.database.BranchWall;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Tries at a secret, counted in the database so that they hold across nodes. A try is counted before the secret is
 * looked at and given back when it fits: a hundred tries at once are still only five.
 */
@Component
public class Tries {

    private static final Duration FORGOTTEN_AFTER = Duration.ofHours(24);
    private static final int LONGEST_LOCK_MIN = 60;

    private final JdbcClient jdbc;
    private final TransactionTemplate ofItsOwn;
    private final Clock clock;

    Tries(JdbcClient jdbc, PlatformTransactionManager transactions, Clock clock) {
        this.jdbc = jdbc;
        this.ofItsOwn = new TransactionTemplate(transactions);
        this.ofItsOwn.setPropagationBehavior(TransactionDefinition.PROPAGATION_REQUIRES_NEW);
        this.clock = clock;
    }

    /** What is being guarded, and how many misses lock it: an e-mail address five, a source address fifty. */
    public record Subject(String kind, String value, int missesToLock) {

        private static final int MISSES_OF_AN_ADDRESS = 5;
        private static final int MISSES_OF_A_SOURCE = 50;

        public static Subject address(String email) {
            return new Subject("address", email, MISSES_OF_AN_ADDRESS);
        }

        /** Where a request came from: an office behind one line shares it, hence more misses. */
        public static Subject source(String ipAddress) {
            return new Subject("source", ipAddress, MISSES_OF_A_SOURCE);
        }

        String key() {
            return kind + ":" + Tokens.hash(kind + " " + value);
        }
    }

    private record Stand(int misses, int locks, @Nullable OffsetDateTime lockedUntil, OffsetDateTime lastAt) {}

    /**
     * Counts a try.
     *
     * @return when the next one is heard, if this one is not
     */
    public Optional<Instant> take(Subject subject) {
        Instant now = clock.instant();
        Optional<Instant> locked = BranchWall.everywhere(
                () -> ofItsOwn.execute(status -> lockedOrCounted(subject, now.atOffset(ZoneOffset.UTC))));
        return locked == null ? Optional.empty() : locked;
    }

    private Optional<Instant> lockedOrCounted(Subject subject, OffsetDateTime now) {
        jdbc.sql("insert into sign_in_tries (subject, last_at) values (?, ?) on conflict do nothing")
                .params(subject.key(), now)
                .update();
        Stand stand = jdbc.sql(
                        "select misses, locks, locked_until, last_at from sign_in_tries where subject = ? for update")
                .param(subject.key())
                .query(Stand.class)
                .single();
        if (stand.lockedUntil != null && stand.lockedUntil.isAfter(now)) {
            return Optional.of(stand.lockedUntil.toInstant());
        }
        boolean forgotten = stand.lastAt.isBefore(now.minus(FORGOTTEN_AFTER));
        int misses = (forgotten ? 0 : stand.misses) + 1;
        int locks = forgotten ? 0 : stand.locks;
        boolean full = misses >= subject.missesToLock;
        OffsetDateTime until = full ? now.plusMinutes(lockMinutes(locks)) : null;
        jdbc.sql("update sign_in_tries set misses = ?, locks = ?, locked_until = ?, last_at = ? where subject = ?")
                .params(full ? 0 : misses, full ? locks + 1 : locks, until, now, subject.key())
                .update();
        return Optional.empty();
    }

    static long lockMinutes(int locksBefore) {
        return locksBefore > 5 ? LONGEST_LOCK_MIN : Math.min(LONGEST_LOCK_MIN, 1L << locksBefore);
    }

    /** @return until when the subject is locked; empty when a try would be heard */
    public Optional<Instant> lockedUntil(Subject subject) {
        return jdbc.sql("select locked_until from sign_in_tries where subject = ? and locked_until > ?")
                .params(subject.key(), clock.instant().atOffset(ZoneOffset.UTC))
                .query(OffsetDateTime.class)
                .optional()
                .map(OffsetDateTime::toInstant);
    }

    /** The secret fitted: nothing is held against the subject any more. */
    public void forgive(Subject subject) {
        jdbc.sql("delete from sign_in_tries where subject = ?")
                .param(subject.key())
                .update();
    }

    /** The secret fitted: this one try is given back, earlier misses stay. */
    public void giveBack(Subject subject) {
        jdbc.sql("update sign_in_tries set misses = greatest(misses - 1, 0) where subject = ?")
                .param(subject.key())
                .update();
    }

    int forgetOld() {
        return jdbc.sql(
                        "delete from sign_in_tries where last_at < ? and (locked_until is null or locked_until < last_at + interval '1 hour')")
                .param(clock.instant().minus(FORGOTTEN_AFTER).atOffset(ZoneOffset.UTC))
                .update();
    }
}
