package org.plumbrow.database;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;

@PlumbrowTest
class ReadOnceTest {

    private record Question(String of) {}

    @Autowired
    PlatformTransactionManager transactions;

    private final AtomicInteger reads = new AtomicInteger();

    private int ask(String of) {
        return ReadOnce.of(new Question(of), reads::incrementAndGet);
    }

    private TransactionTemplate reading() {
        TransactionTemplate reading = new TransactionTemplate(transactions);
        reading.setReadOnly(true);
        return reading;
    }

    @Test
    void aPageReadsTheSameOnceAndAnotherThingForItself() {
        reading().executeWithoutResult(status -> {
            assertThat(ask("one")).isEqualTo(1);
            assertThat(ask("other")).isEqualTo(2);
            assertThat(ask("one")).isEqualTo(1);
        });
    }

    @Test
    void theNextPageReadsAnew() {
        reading().executeWithoutResult(status -> ask("one"));
        reading().executeWithoutResult(status -> assertThat(ask("one")).isEqualTo(2));
    }

    @Test
    void whereSomethingMayBeWrittenEachQuestionIsAskedAnew() {
        new TransactionTemplate(transactions).executeWithoutResult(status -> {
            ask("one");
            assertThat(ask("one")).isEqualTo(2);
        });
        assertThat(ask("one")).isEqualTo(3);
    }

    @Test
    void aTransactionOfItsOwnInBetweenHasAnswersOfItsOwn() {
        TransactionTemplate apart = reading();
        apart.setPropagationBehavior(TransactionDefinition.PROPAGATION_REQUIRES_NEW);
        reading().executeWithoutResult(status -> {
            assertThat(ask("one")).isEqualTo(1);
            apart.executeWithoutResult(inner -> assertThat(ask("one")).isEqualTo(2));
            assertThat(ask("one")).isEqualTo(1);
        });
    }
}
