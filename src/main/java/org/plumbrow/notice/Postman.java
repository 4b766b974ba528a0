package org.plumbrow.notice;

import jakarta.mail.MessagingException;
import jakarta.mail.internet.AddressException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.database.BranchWall;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.mail.MailException;
import org.springframework.mail.javamail.JavaMailSender;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Carries notices to the mail server: five tries in 24 hours, then the notice says why it did not leave. A try is
 * written down before it is made; a node that dies in between costs one try, and at worst the same mail (with the same
 * message id) goes twice.
 */
@Component
class Postman {

    private static final Logger LOG = LoggerFactory.getLogger(Postman.class);
    private static final int AT_ONCE = 100;

    /** Waits after the first, second, third and fourth try: 24 hours in all. */
    private static final List<Duration> WAITS = List.of(
            Duration.ofMinutes(15), Duration.ofMinutes(105), Duration.ofHours(6), Duration.ofHours(16), Duration.ZERO);

    private final Notices notices;
    private final TransactionTemplate transaction;
    private final ObjectProvider<JavaMailSender> mailServer;
    private final Letters letters;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    Postman(
            Notices notices,
            TransactionTemplate transaction,
            ObjectProvider<JavaMailSender> mailServer,
            Letters letters,
            ApplicationEventPublisher events,
            Clock clock) {
        this.notices = notices;
        this.transaction = transaction;
        this.mailServer = mailServer;
        this.letters = letters;
        this.events = events;
        this.clock = clock;
    }

    boolean canSend() {
        return mailServer.getIfAvailable() != null;
    }

    /** Tries everything whose hour has come. */
    void deliverDue() {
        if (canSend()) {
            List<UUID> due =
                    BranchWall.everywhere(() -> transaction.execute(status -> notices.due(clock.instant(), AT_ONCE)));
            if (due != null) {
                due.forEach(this::deliver);
            }
        }
    }

    void deliver(UUID id) {
        JavaMailSender server = mailServer.getIfAvailable();
        if (server == null) {
            return;
        }
        Instant now = clock.instant();
        // Until the outcome is known the next try is a quarter of an hour off: that is how long a dead node is waited
        // for.
        Optional<Notices.Letter> taken = BranchWall.everywhere(
                () -> transaction.execute(status -> notices.take(id, now, now.plus(WAITS.get(0)))));
        if (taken != null && taken.isPresent()) {
            Notices.Letter letter = taken.get();
            Outcome outcome = send(server, letter);
            BranchWall.everywhere(() -> transaction.executeWithoutResult(status -> settle(letter, outcome)));
        }
    }

    /** @param refusal why it was not sent; null if it was */
    private record Outcome(@Nullable String refusal, boolean forGood) {}

    private Outcome send(JavaMailSender server, Notices.Letter letter) {
        try {
            server.send(letters.mailOf(letter, server.createMimeMessage()));
            return new Outcome(null, false);
        } catch (AddressException noAddress) {
            return new Outcome("\"" + letter.line().toAddress() + "\" is no e-mail address.", true);
        } catch (MailException | MessagingException refused) {
            LOG.warn("Notice {} was not sent: {}", letter.line().id(), refused.toString());
            return new Outcome("The mail server did not take it: " + firstLine(refused), false);
        }
    }

    private static String firstLine(Exception refused) {
        Throwable root = refused;
        while (root.getCause() != null) {
            root = root.getCause();
        }
        String message = root.getMessage() == null ? root.getClass().getSimpleName() : root.getMessage();
        String line = message.lines().findFirst().orElse("").strip();
        return line.length() > 200 ? line.substring(0, 200) : line;
    }

    private void settle(Notices.Letter letter, Outcome outcome) {
        NoticeLine line = letter.line();
        Instant now = clock.instant();
        if (outcome.refusal == null) {
            if (notices.settle(line.id(), NoticeState.SENT, "", "Plumbrow", now)) {
                events.publishEvent(new NoticeLeft(
                        line.id(), letter.branchId(), letter.projectId(), letter.about(), "by e-mail", now));
            }
        } else if (outcome.forGood || line.tries() >= WAITS.size()) {
            if (notices.settle(line.id(), NoticeState.NOT_SENT, outcome.refusal, "Plumbrow", now)) {
                events.publishEvent(new NoticeNotSent(
                        line.id(),
                        line.kind(),
                        letter.branchId(),
                        letter.projectId(),
                        line.subject(),
                        outcome.refusal));
            }
        } else {
            notices.postpone(line.id(), now.plus(WAITS.get(line.tries() - 1)), outcome.refusal);
        }
    }
}
