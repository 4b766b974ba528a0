package org.plumbrow;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.concurrent.atomic.AtomicReference;

/** A clock that stands still until a test moves it; back at {@link #START} before each test. */
public final class TestClock extends Clock {

    /** Monday, 1 March 2027, 9:00 am in New York. */
    public static final Instant START = Instant.parse("2027-03-01T14:00:00Z");

    private final AtomicReference<Instant> now;
    private final ZoneId zone;

    TestClock() {
        this(new AtomicReference<>(START), ZoneOffset.UTC);
    }

    private TestClock(AtomicReference<Instant> now, ZoneId zone) {
        this.now = now;
        this.zone = zone;
    }

    public void standAt(Instant instant) {
        now.set(instant);
    }

    public void standAt(String instant) {
        standAt(Instant.parse(instant));
    }

    public void pass(Duration time) {
        now.updateAndGet(instant -> instant.plus(time));
    }

    @Override
    public Instant instant() {
        return now.get();
    }

    @Override
    public ZoneId getZone() {
        return zone;
    }

    @Override
    public Clock withZone(ZoneId other) {
        return new TestClock(now, other);
    }
}
