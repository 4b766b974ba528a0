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

    private static final Duration LOCKS_FORGOTTEN_AFTER = Duration.ofHours(24);
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

    /**
     * What is being guarded.
     *
     * @param missesToLock how many misses lock it
     * @param within the time in which they count together
     */
    public record Subject(String kind, String value, int missesToLock, Duration within) {

        private static final int MISSES_OF_AN_ADDRESS = 5;
        private static final int MISSES_OF_A_SOURCE = 50;
        private static final int LINKS_OF_A_SOURCE = 20;

        public static Subject address(String email) {
            return new Subject("address", email, MISSES_OF_AN_ADDRESS, Duration.ofHours(24));
        }

        /** Where a request came from: an office behind one line shares it, hence more misses and a shorter time. */
        public static Subject source(String ipAddress) {
            return new Subject("source", ipAddress, MISSES_OF_A_SOURCE, Duration.ofHours(1));
        }

        /** Who is sent links for a new password. */
        public static Subject linksTo(String email) {
            return new Subject("links-to", email, MISSES_OF_AN_ADDRESS, Duration.ofHours(24));
        }

        /** Where links for a new password are asked for. */
        public static Subject linksFrom(String ipAddress) {
            return new Subject("links-from", ipAddress, LINKS_OF_A_SOURCE, Duration.ofHours(1));
        }

        String key() {
            return kind + ":" + Tokens.hash(kind + " " + value);
        }
    }

    private record Stand(int misses, int locks, @Nullable OffsetDateTime lockedUntil, OffsetDateTime beganAt) {

        boolean isLocked(OffsetDateTime now) {
            return lockedUntil != null && lockedUntil.isAfter(now);
        }

        /** One miss more; the fifth (or whatever the subject bears) locks, each time for twice as long. */
        Stand missedOnce(Subject subject, OffsetDateTime now) {
            boolean fresh = misses == 0 || beganAt.isBefore(now.minus(subject.within));
            boolean calm = lockedUntil == null || lockedUntil.isBefore(now.minus(LOCKS_FORGOTTEN_AFTER));
            int counted = fresh ? 1 : misses + 1;
            int earlierLocks = calm ? 0 : locks;
            return counted >= subject.missesToLock
                    ? new Stand(0, earlierLocks + 1, now.plusMinutes(lockMinutes(earlierLocks)), now)
                    : new Stand(counted, earlierLocks, lockedUntil, fresh ? now : beganAt);
        }
    }

    /**
     * Counts a try.
     *
     * @return when the next one is heard, if this one is not
     */
    public Optional<Instant> take(Subject subject) {
        OffsetDateTime now = clock.instant().atOffset(ZoneOffset.UTC);
        Optional<Instant> locked =
                BranchWall.everywhere(() -> ofItsOwn.execute(status -> lockedOrCounted(subject, now)));
        return locked == null ? Optional.empty() : locked;
    }

    private Optional<Instant> lockedOrCounted(Subject subject, OffsetDateTime now) {
        jdbc.sql("insert into sign_in_tries (subject, began_at, last_at) values (?, ?, ?) on conflict do nothing")
                .params(subject.key(), now, now)
                .update();
        Stand stand = jdbc.sql(
                        "select misses, locks, locked_until, began_at from sign_in_tries where subject = ? for update")
                .param(subject.key())
                .query(Stand.class)
                .single();
        if (stand.isLocked(now)) {
            return Optional.ofNullable(stand.lockedUntil).map(OffsetDateTime::toInstant);
        }
        Stand next = stand.missedOnce(subject, now);
        jdbc.sql("""
                        update sign_in_tries set misses = ?, locks = ?, locked_until = ?, began_at = ?, last_at = ?
                         where subject = ?
                        """)
                .params(next.misses, next.locks, next.lockedUntil, next.beganAt, now, subject.key())
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
                .param(clock.instant()
                        .minus(LOCKS_FORGOTTEN_AFTER.multipliedBy(2))
                        .atOffset(ZoneOffset.UTC))
                .update();
    }
}
