package org.plumbrow.cutover.daylog;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** The tap that is being stored, while it is stored: the pen asks here when a thing happened. */
@Component
class PhoneTaps {

    private final ThreadLocal<PhoneTap> tap = new ThreadLocal<>();

    /** Null when what is written comes from the page and happens now. */
    @Nullable
    PhoneTap current() {
        return tap.get();
    }

    <T> T during(PhoneTap of, Supplier<T> work) {
        tap.set(of);
        try {
            return work.get();
        } finally {
            tap.remove();
        }
    }
}
