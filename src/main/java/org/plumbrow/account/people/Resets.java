package org.plumbrow.account.people;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.plumbrow.account.person.Credentials;
import org.plumbrow.account.person.Credentials.Proof;
import org.plumbrow.account.person.NewPassword;
import org.plumbrow.account.person.Opened;
import org.plumbrow.account.person.SecurityLog;
import org.plumbrow.account.person.Tokens;
import org.plumbrow.account.person.Tries;
import org.plumbrow.account.person.Tries.Subject;
import org.plumbrow.database.BranchWall;
import org.plumbrow.database.Ids;
import org.plumbrow.notice.NewNotice;
import org.plumbrow.notice.NewNotice.Recipient;
import org.plumbrow.notice.Outbox;
import org.plumbrow.notice.OwnAddress;
import org.plumbrow.web.Refusal;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * A forgotten password is chosen anew behind a link: one hour, once. Whoever asks is told the same, whether the address
 * is known or not. Using the link ends every session and kept phone of the person.
 */
@Service
class Resets {

    static final Duration LIFE = Duration.ofHours(1);

    private final JdbcClient jdbc;
    private final TransactionTemplate transaction;
    private final Credentials credentials;
    private final NewPassword newPassword;
    private final Tries tries;
    private final Opened opened;
    private final Outbox outbox;
    private final OwnAddress ownAddress;
    private final SecurityLog log;
    private final Clock clock;

    Resets(
            JdbcClient jdbc,
            TransactionTemplate transaction,
            Credentials credentials,
            NewPassword newPassword,
            Tries tries,
            Opened opened,
            Outbox outbox,
            OwnAddress ownAddress,
            SecurityLog log,
            Clock clock) {
        this.jdbc = jdbc;
        this.transaction = transaction;
        this.credentials = credentials;
        this.newPassword = newPassword;
        this.tries = tries;
        this.opened = opened;
        this.outbox = outbox;
        this.ownAddress = ownAddress;
        this.log = log;
        this.clock = clock;
    }

    /** Sends a link if the address is known and did not ask five times already; says neither. */
    void ask(String typedEmail, String source) {
        String email = Credentials.addressOf(typedEmail);
        boolean tooOften = tries.take(Subject.linksFrom(source)).isPresent()
                || tries.take(Subject.linksTo(email)).isPresent();
        if (!tooOften) {
            credentials
                    .ofAddress(email)
                    .ifPresent(person -> everywhere(() -> {
                        send(person);
                        return Optional.empty();
                    }));
        }
    }

    private void send(Proof person) {
        UUID id = Ids.next();
        String token = Tokens.next();
        OffsetDateTime now = clock.instant().atOffset(ZoneOffset.UTC);
        jdbc.sql("insert into password_reset (id, person_id, token_hash, created_at, ends_at) values (?, ?, ?, ?, ?)")
                .params(id, person.id(), Tokens.hash(token), now, now.plus(LIFE))
                .update();
        outbox.post(NewNotice.toSignIn(
                null, aboutOf(id), new Recipient(person.name(), person.email()), "Choose a new password", """
                Somebody, probably you, wants to choose a new password for %s.

                Open this page within one hour; it works once:
                %s

                When the new password is set, everything that is signed in with the old one ends.
                If you did not ask for this, do nothing; the old password stays.
                """.formatted(
                                person.email(), ownAddress.of("/reset/" + token))));
        log.write("reset-asked", person.actor(), "A link to choose a new password was asked for.");
    }

    /** A link that still holds. */
    record Open(UUID id, UUID personId, Instant endsAt) {}

    Optional<Open> behind(String token) {
        return everywhere(() -> find(token));
    }

    private Optional<Open> find(String token) {
        return jdbc.sql(
                        "select id, person_id, ends_at from password_reset where token_hash = ? and used_at is null and ends_at > ?")
                .params(Tokens.hash(token), clock.instant().atOffset(ZoneOffset.UTC))
                .query(Open.class)
                .optional();
    }

    /**
     * @return what is wrong with the new password; empty when it holds
     * @throws LinkHasEnded if the link was used or has ended, also in this very moment
     */
    Optional<Refusal> use(String token, ResetForm form) {
        Optional<Refusal> refused = newPassword.check(form.password(), form.again());
        return refused.isPresent() ? refused : everywhere(() -> useNow(token, String.valueOf(form.password())));
    }

    private Optional<Refusal> useNow(String token, String password) {
        Open link = find(token).orElseThrow(LinkHasEnded::new);
        int first = jdbc.sql("update password_reset set used_at = ? where id = ? and used_at is null")
                .params(clock.instant().atOffset(ZoneOffset.UTC), link.id)
                .update();
        Proof person = credentials.of(link.personId).orElseThrow(LinkHasEnded::new);
        if (first == 0) {
            throw new LinkHasEnded();
        }
        jdbc.sql("update password_reset set used_at = ? where person_id = ? and used_at is null")
                .params(clock.instant().atOffset(ZoneOffset.UTC), person.id())
                .update();
        credentials.change(person.id(), password);
        opened.endAll(person.id());
        tries.forgive(Subject.address(person.email()));
        outbox.blank(aboutOf(link.id));
        log.write("reset-used", person.actor(), "Chose a new password by link; everything of theirs was signed out.");
        return Optional.empty();
    }

    private static String aboutOf(UUID id) {
        return "reset:" + id;
    }

    private <T> Optional<T> everywhere(Supplier<Optional<T>> work) {
        Optional<T> result = BranchWall.everywhere(() -> transaction.execute(status -> work.get()));
        return result == null ? Optional.empty() : result;
    }
}
