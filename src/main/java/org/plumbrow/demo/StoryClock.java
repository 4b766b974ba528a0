package org.plumbrow.demo;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * The house's clock while the demo's story is told: on the thread that tells it, the time of the story; on all others
 * the time of the clock behind it. It exists only where the demo does, so that nothing else can be dated back.
 */
final class StoryClock extends Clock {

    private static final ThreadLocal<@Nullable Instant> TOLD = new ThreadLocal<>();

    private final Clock present;

    StoryClock(Clock present) {
        this.present = present;
    }

    /** Does the work as if it were that moment. */
    static void at(Instant moment, Runnable work) {
        at(moment, () -> {
            work.run();
            return Boolean.TRUE;
        });
    }

    /** As {@link #at(Instant, Runnable)}, for work with a result. */
    static <T> T at(Instant moment, Supplier<T> work) {
        TOLD.set(moment);
        try {
            return work.get();
        } finally {
            TOLD.remove();
        }
    }

    @Override
    public Instant instant() {
        Instant told = TOLD.get();
        return told == null ? present.instant() : told;
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return this;
    }
}
