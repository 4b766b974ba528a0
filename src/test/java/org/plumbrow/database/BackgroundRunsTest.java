package org.plumbrow.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestClock;
import org.plumbrow.TestWorld;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.dao.CannotAcquireLockException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.IllegalTransactionStateException;
import org.springframework.transaction.support.TransactionTemplate;

/** Background runs on the real database, done by the real scheduler. */
@PlumbrowTest
class BackgroundRunsTest {

    private static final Duration SOON = Duration.ofSeconds(20);

    @Autowired
    BackgroundRuns runs;

    @Autowired
    RunRows rows;

    @Autowired
    TransactionTemplate transaction;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TestWorld world;

    UUID branch;

    @BeforeEach
    void aBranch() {
        branch = world.branch().id();
    }

    @Test
    void aRunIsDoneAndSaysHowItEnded() {
        UUID subject = WatchedWork.behaving(progress -> "Placed 12 visits for " + progress.askedBy() + ".");
        Run run = over(start(subject));
        assertThat(run.state()).isEqualTo(Run.State.DONE);
        assertThat(run.outcome()).isEqualTo("Placed 12 visits for Ines.");
        assertThat(run.finishedAt()).isEqualTo(TestClock.START);
        assertThat(run.tries()).isEqualTo(1);
    }

    @Test
    void aChangeThatIsRolledBackTakesItsRunAlong() {
        AtomicInteger begun = new AtomicInteger();
        UUID subject = WatchedWork.behaving(progress -> "Begun " + begun.incrementAndGet() + " times.");
        UUID rolledBack = inBranch(() -> transaction.execute(status -> {
            status.setRollbackOnly();
            return runs.start(WatchedWork.KIND, branch, subject, "Ines");
        }));
        assertThat(find(rolledBack)).isEmpty();
        assertThat(jdbc.sql("select count(*) from scheduled_tasks where task_instance = ?")
                        .param(rolledBack.toString())
                        .query(Long.class)
                        .single())
                .isZero();
        assertThat(over(start(subject)).outcome()).isEqualTo("Begun 1 times.");
    }

    @Test
    void aRunCannotBeAskedForOutsideTheChangeThatNeedsIt() {
        assertThatThrownBy(() -> runs.start(WatchedWork.KIND, branch, null, "Ines"))
                .isInstanceOf(IllegalTransactionStateException.class);
    }

    @Test
    void othersSeeTheProgressWhileItRunsEvenInATransactionOfItsOwn() {
        CountDownLatch seen = new CountDownLatch(1);
        UUID subject = WatchedWork.behaving(progress -> inScope(() -> {
            progress.step(212, 480, "Placing 212 of 480 visits");
            wait(seen);
            return "All placed.";
        }));
        UUID id = start(subject);
        await().atMost(SOON).until(() -> find(id).orElseThrow().done() == 212);
        Run run = find(id).orElseThrow();
        assertThat(run.state()).isEqualTo(Run.State.RUNNING);
        assertThat(run.words()).isEqualTo("Placing 212 of 480 visits");
        assertThat(run.percent()).isEqualTo(44);
        seen.countDown();
        assertThat(over(id).state()).isEqualTo(Run.State.DONE);
    }

    @Test
    void whoeverAsksWhileOneWaitsJoinsIt() {
        AtomicInteger begun = new AtomicInteger();
        UUID subject = WatchedWork.behaving(progress -> "Begun " + begun.incrementAndGet() + " times.");
        List<UUID> asked = inBranch(() -> transaction.execute(status -> {
            UUID first = runs.start(WatchedWork.KIND, branch, subject, "Ines");
            return List.of(first, runs.start(WatchedWork.KIND, branch, subject, "Tamsin"));
        }));
        assertThat(asked.get(1)).isEqualTo(asked.get(0));
        assertThat(over(asked.get(0)).outcome()).isEqualTo("Begun 1 times.");
    }

    @Test
    void aRunThatWasJoinedDoesNotBeginBeforeTheJoinersCommit() {
        CountDownLatch firstMayEnd = new CountDownLatch(1);
        AtomicInteger begun = new AtomicInteger();
        UUID subject = WatchedWork.behaving(progress -> {
            if (begun.incrementAndGet() == 1) {
                wait(firstMayEnd);
            }
            return inScope(() -> jdbc.sql("select name from branch where id = ?")
                    .param(progress.branchId())
                    .query(String.class)
                    .single());
        });
        UUID first = start(subject);
        await().atMost(SOON).until(() -> begun.get() == 1);
        UUID second = start(subject);
        UUID joined = inBranch(() -> transaction.execute(status -> {
            UUID id = runs.start(WatchedWork.KIND, branch, subject, "Tamsin");
            firstMayEnd.countDown();
            await().atMost(SOON).until(() -> find(first).orElseThrow().isOver());
            jdbc.sql("update branch set name = 'Renamed' where id = ?")
                    .param(branch)
                    .update();
            // the second one is due by now and stands before the lock that this transaction holds
            await().during(Duration.ofMillis(2500)).atMost(SOON).until(() -> begun.get() == 1);
            return id;
        }));
        assertThat(joined).isEqualTo(second).isNotEqualTo(first);
        assertThat(over(second).outcome()).isEqualTo("Renamed");
    }

    @Test
    void whoeverAsksWhileOneRunsGetsExactlyOneMore() {
        CountDownLatch firstMayEnd = new CountDownLatch(1);
        AtomicInteger begun = new AtomicInteger();
        AtomicInteger atOnce = new AtomicInteger();
        AtomicInteger mostAtOnce = new AtomicInteger();
        UUID subject = WatchedWork.behaving(progress -> {
            mostAtOnce.accumulateAndGet(atOnce.incrementAndGet(), Math::max);
            if (begun.incrementAndGet() == 1) {
                wait(firstMayEnd);
            }
            atOnce.decrementAndGet();
            return "Begun " + begun.get() + " times.";
        });
        UUID first = start(subject);
        await().atMost(SOON).until(() -> begun.get() == 1);
        UUID second = start(subject);
        UUID third = start(subject);
        firstMayEnd.countDown();
        assertThat(second).isNotEqualTo(first).isEqualTo(third);
        assertThat(over(second).outcome()).isEqualTo("Begun 2 times.");
        assertThat(over(first).outcome()).isEqualTo("Begun 1 times.");
        assertThat(mostAtOnce).hasValue(1);
    }

    @Test
    void aRunUnderWayStopsWhenAskedTo() {
        CountDownLatch begun = new CountDownLatch(1);
        UUID subject = WatchedWork.behaving(progress -> {
            begun.countDown();
            await().atMost(SOON).until(progress::isStopped);
            return "Left off after 3 of 480 visits; nothing was changed.";
        });
        UUID id = start(subject);
        wait(begun);
        inBranch(() -> {
            runs.stop(id, "Tamsin");
            return id;
        });
        Run run = over(id);
        assertThat(run.state()).isEqualTo(Run.State.STOPPED);
        assertThat(run.stopAskedBy()).isEqualTo("Tamsin");
        assertThat(run.outcome()).isEqualTo("Left off after 3 of 480 visits; nothing was changed.");
    }

    @Test
    void aRunThatStillWaitsIsStoppedAtOnceAndNeverBegins() {
        CountDownLatch firstMayEnd = new CountDownLatch(1);
        AtomicInteger begun = new AtomicInteger();
        UUID subject = WatchedWork.behaving(progress -> {
            begun.incrementAndGet();
            wait(firstMayEnd);
            return "Done.";
        });
        UUID first = start(subject);
        await().atMost(SOON).until(() -> begun.get() == 1);
        UUID second = start(subject);
        inBranch(() -> {
            runs.stop(second, "Tamsin");
            return second;
        });
        assertThat(find(second).orElseThrow().outcome()).isEqualTo("Stopped by Tamsin before it began.");
        firstMayEnd.countDown();
        over(first);
        await().atMost(SOON)
                .until(() -> jdbc.sql("select count(*) from scheduled_tasks where task_instance = ?")
                                .param(second.toString())
                                .query(Long.class)
                                .single()
                        == 0);
        assertThat(begun).hasValue(1);
    }

    @Test
    void workThatCannotBeDoneSaysWhy() {
        UUID subject = WatchedWork.behaving(progress -> {
            throw new RunFailed("No crew of the branch can drive posts. Add the skill to a crew.");
        });
        Run run = over(start(subject));
        assertThat(run.state()).isEqualTo(Run.State.FAILED);
        assertThat(run.outcome()).isEqualTo("No crew of the branch can drive posts. Add the skill to a crew.");
    }

    @Test
    void aFaultOfOursIsRecordedWithoutItsInnards() {
        UUID subject = WatchedWork.behaving(progress -> {
            throw new IllegalStateException("secret innards");
        });
        UUID id = start(subject);
        Run run = over(id);
        assertThat(run.state()).isEqualTo(Run.State.FAILED);
        assertThat(run.outcome()).isEqualTo("Broken off by a fault of ours; it stands in the log under " + id + ".");
    }

    @Test
    void workThatNobodyKnowsAnyMoreIsNotWaitedFor() {
        UUID id = inBranch(() -> transaction.execute(status -> runs.start("given-up-work", branch, null, "Ines")));
        assertThat(over(id).outcome()).isEqualTo("This release does not know the work \"given-up-work\".");
    }

    @Test
    void aPassingObstacleIsTriedAgain() {
        AtomicInteger begun = new AtomicInteger();
        UUID subject = WatchedWork.behaving(progress -> {
            if (begun.incrementAndGet() == 1) {
                throw new CannotAcquireLockException("deadlock");
            }
            return "Done.";
        });
        Run run = over(start(subject));
        assertThat(run.state()).isEqualTo(Run.State.DONE);
        assertThat(run.tries()).isEqualTo(2);
    }

    @Test
    void theWorkSeesTheRowsOfItsBranchOnly() {
        UUID other = world.branch().id();
        UUID subject = WatchedWork.behaving(
                progress -> inScope(() -> jdbc.sql("select plumbrow_sees(?) || ' ' || plumbrow_sees(?)")
                        .params(progress.branchId(), other)
                        .query(String.class)
                        .single()));
        assertThat(over(start(subject)).outcome()).isEqualTo("true false");
    }

    @Test
    void anotherBranchDoesNotSeeTheRun() {
        UUID id = start(WatchedWork.behaving(progress -> "Done."));
        UUID other = world.branch().id();
        assertThat(BranchWall.within(other, () -> runs.find(id))).isEmpty();
        over(id);
    }

    @Test
    void theLatestRunOfASubjectIsFound() {
        UUID subject = WatchedWork.behaving(progress -> "Done.");
        UUID first = start(subject);
        over(first);
        UUID second = start(subject);
        over(second);
        assertThat(inBranch(() -> runs.latest(WatchedWork.KIND, branch, subject)))
                .map(Run::id)
                .contains(second);
        assertThat(inBranch(() -> runs.latest(WatchedWork.KIND, branch, null))).isEmpty();
    }

    @Test
    void aRunIsForgottenNinetyDaysAfterItsEndAndNotBefore() {
        UUID id = start(WatchedWork.behaving(progress -> "Done."));
        over(id);
        forgetBefore(Duration.ZERO);
        assertThat(find(id)).isPresent();
        forgetBefore(Duration.ofSeconds(1));
        assertThat(find(id)).isEmpty();
    }

    private void forgetBefore(Duration afterStart) {
        inBranch(() -> transaction.execute(status -> rows.forgetEndedBefore(TestClock.START.plus(afterStart))));
    }

    private UUID start(UUID subject) {
        return inBranch(() -> transaction.execute(status -> runs.start(WatchedWork.KIND, branch, subject, "Ines")));
    }

    private Run over(UUID id) {
        await().atMost(SOON).until(() -> find(id).orElseThrow().isOver());
        return find(id).orElseThrow();
    }

    private Optional<Run> find(UUID id) {
        return inBranch(() -> runs.find(id));
    }

    private <T> T inBranch(Supplier<T> work) {
        return BranchWall.within(branch, work);
    }

    private <T> T inScope(Supplier<T> work) {
        return transaction.execute(status -> work.get());
    }

    private static void wait(CountDownLatch latch) {
        try {
            assertThat(latch.await(20, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
