package org.plumbrow.database;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Supplier;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/**
 * What several parts of a page ask for is read once: within one read-only transaction the same question has the same
 * answer. Where something may be written, each question is asked anew.
 */
public final class ReadOnce {

    private ReadOnce() {}

    /** @param question a record of the room that asks, equal when the answer is the same */
    @SuppressWarnings("unchecked") // the question is of the asking room's own type, and so is its answer
    public static <T> T of(Record question, Supplier<T> read) {
        if (!TransactionSynchronizationManager.isSynchronizationActive()
                || !TransactionSynchronizationManager.isCurrentTransactionReadOnly()) {
            return read.get();
        }
        Map<Record, Object> known = known();
        T answer = (T) known.get(question);
        if (answer == null) {
            answer = read.get();
            known.put(question, answer);
        }
        return answer;
    }

    @SuppressWarnings("unchecked") // only this class binds under its own name
    private static Map<Record, Object> known() {
        Map<Record, Object> known = (Map<Record, Object>) TransactionSynchronizationManager.getResource(ReadOnce.class);
        if (known == null) {
            known = new HashMap<>();
            Known transaction = new Known(known);
            transaction.resume();
            TransactionSynchronizationManager.registerSynchronization(transaction);
        }
        return known;
    }

    /** Lasts as long as its transaction; one that begins within it has its own. */
    private record Known(Map<Record, Object> answers) implements TransactionSynchronization {
        @Override
        public void suspend() {
            TransactionSynchronizationManager.unbindResource(ReadOnce.class);
        }

        @Override
        public void resume() {
            TransactionSynchronizationManager.bindResource(ReadOnce.class, answers);
        }

        @Override
        public void beforeCompletion() {
            suspend();
        }
    }
}
