package org.plumbrow.notice;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.plumbrow.database.BackgroundTasks;
import org.plumbrow.database.BranchWall;
import org.plumbrow.web.Access;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Paging;
import org.plumbrow.web.SecurityEvent;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Reading the outbox: a branch's managers read what their branch wrote; what lets somebody sign in is read by the
 * firm's owner only, and that is written down.
 */
@Service
class OutboxDesk {

    private final Notices notices;
    private final Postman postman;
    private final BackgroundTasks tasks;
    private final TransactionTemplate transaction;
    private final ApplicationEventPublisher events;
    private final Access access;
    private final Clock clock;

    OutboxDesk(
            Notices notices,
            Postman postman,
            BackgroundTasks tasks,
            TransactionTemplate transaction,
            ApplicationEventPublisher events,
            Access access,
            Clock clock) {
        this.notices = notices;
        this.postman = postman;
        this.tasks = tasks;
        this.transaction = transaction;
        this.events = events;
        this.access = access;
        this.clock = clock;
    }

    /** One page of a list, with the sums of the whole list. */
    record View(Notices.Sums sums, List<NoticeLine> lines, Paging page) {}

    View ofBranch(int page) {
        UUID branch = access.require(May.SEE_OUTBOX).id();
        return inTransaction(() -> {
            Notices.Sums sums = notices.sumsOfBranch(branch);
            Paging paging = Paging.of(page, sums.total());
            return new View(sums, notices.ofBranch(branch, paging), paging);
        });
    }

    View toSignIn(int page) {
        access.require(May.RUN_FIRM);
        return BranchWall.everywhere(() -> inTransaction(() -> {
            Notices.Sums sums = notices.sumsToSignIn();
            Paging paging = Paging.of(page, sums.total());
            return new View(sums, notices.toSignIn(paging), paging);
        }));
    }

    Notices.Letter read(UUID id) {
        return BranchWall.everywhere(() -> inTransaction(() -> {
            Notices.Letter letter = mayOpen(id);
            if (letter.line().kind() == NoticeKind.SIGN_IN && letter.blankedAt() == null) {
                events.publishEvent(SecurityEvent.of(
                        "outbox-read",
                        access.actor(),
                        "Read the sign-in mail to " + letter.line().toAddress() + "."));
            }
            return letter;
        }));
    }

    /** A person told the recipient in another way. @return whether it was still open */
    boolean passedOn(UUID id) {
        return change(id, letter -> {
            String by = access.visitor().name();
            boolean open = notices.passOn(id, by, clock.instant());
            if (open) {
                events.publishEvent(new NoticeLeft(
                        id,
                        letter.branchId(),
                        letter.projectId(),
                        letter.about(),
                        "passed on by " + by,
                        clock.instant()));
            }
            return open;
        });
    }

    /** @return whether it had been given up or passed on */
    boolean waitAgain(UUID id) {
        return change(id, letter -> {
            boolean again = notices.waitAgain(id, clock.instant());
            if (again && postman.canSend() && !letter.line().toAddress().isBlank()) {
                tasks.soon(SendNotices.ONE.instance(id.toString()).build());
            }
            return again;
        });
    }

    private boolean change(UUID id, Predicate<Notices.Letter> change) {
        return BranchWall.everywhere(() -> inTransaction(() -> change.test(mayOpen(id))));
    }

    private Notices.Letter mayOpen(UUID id) {
        Notices.Letter letter = notices.find(id).orElseThrow(NotFound::new);
        UUID branch = letter.branchId();
        if (branch != null) {
            access.require(branch, letter.line().kind() == NoticeKind.SIGN_IN ? May.RUN_FIRM : May.SEE_OUTBOX);
        } else {
            access.require(May.RUN_FIRM);
        }
        return letter;
    }

    private <T> T inTransaction(Supplier<T> work) {
        return Optional.ofNullable(transaction.execute(status -> work.get())).orElseThrow();
    }
}
