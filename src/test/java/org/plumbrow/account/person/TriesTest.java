package org.plumbrow.account.person;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestClock;
import org.plumbrow.account.person.Tries.Subject;
import org.springframework.beans.factory.annotation.Autowired;

@PlumbrowTest
class TriesTest {

    @Autowired
    Tries tries;

    @Autowired
    TestClock clock;

    private final Subject address = Subject.address(UUID.randomUUID() + "@test.example");

    @Test
    void fiveMissesLockForOneMinuteThenTwoThenFourAndNeverLongerThanAnHour() {
        for (long minutes : new long[] {1, 2, 4, 8, 16, 32, 60, 60, 60}) {
            for (int miss = 0; miss < 5; miss++) {
                assertThat(tries.take(address))
                        .as("try %d before %d min", miss, minutes)
                        .isEmpty();
            }
            assertThat(tries.take(address)).contains(clock.instant().plus(Duration.ofMinutes(minutes)));
            clock.pass(Duration.ofMinutes(minutes).minusSeconds(1));
            assertThat(tries.take(address)).isPresent();
            clock.pass(Duration.ofSeconds(1));
        }
    }

    @Test
    void tryingWhileLockedDoesNotMakeItLonger() {
        for (int miss = 0; miss < 5; miss++) {
            tries.take(address);
        }
        var until = tries.lockedUntil(address);
        for (int more = 0; more < 10; more++) {
            assertThat(tries.take(address)).isEqualTo(until);
        }
    }

    @Test
    void aFitForgivesTheAddressAndADayForgetsIt() {
        for (int miss = 0; miss < 4; miss++) {
            tries.take(address);
        }
        tries.forgive(address);
        for (int miss = 0; miss < 4; miss++) {
            assertThat(tries.take(address)).isEmpty();
        }
        clock.pass(Duration.ofHours(25));
        for (int miss = 0; miss < 4; miss++) {
            assertThat(tries.take(address)).isEmpty();
        }
        assertThat(tries.lockedUntil(address)).isEmpty();
    }

    @Test
    void anOfficeThatMissesNowAndThenIsNeverLocked() {
        Subject office = Subject.source("office-" + UUID.randomUUID());
        for (int miss = 0; miss < 200; miss++) {
            assertThat(tries.take(office)).isEmpty();
            clock.pass(Duration.ofMinutes(2));
        }
        assertThat(tries.lockedUntil(office)).isEmpty();
    }

    @Test
    void fiftyMissesWithinAnHourLockASource() {
        Subject source = Subject.source("source-" + UUID.randomUUID());
        for (int miss = 0; miss < 50; miss++) {
            assertThat(tries.take(source)).isEmpty();
            clock.pass(Duration.ofSeconds(1));
        }
        assertThat(tries.take(source)).isPresent();
    }

    @Test
    void aHundredTriesAtOnceAreStillOnlyFive() throws Exception {
        var nodes = Executors.newFixedThreadPool(4);
        List<Callable<Boolean>> attempts = new ArrayList<>();
        for (int i = 0; i < 100; i++) {
            attempts.add(() -> tries.take(address).isEmpty());
        }
        long heard = 0;
        for (var attempt : nodes.invokeAll(attempts)) {
            heard += attempt.get() ? 1 : 0;
        }
        nodes.shutdown();
        assertThat(heard).isEqualTo(5);
    }
}
