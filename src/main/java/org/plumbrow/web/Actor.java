package org.plumbrow.web;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Who did something, for journals and logs.
 *
 * @param personId the person's account; null for a customer, for somebody without an account and for Plumbrow itself
 * @param name as it is written in the journal
 */
public record Actor(@Nullable UUID personId, String name) {

    /** Work that nobody asked for at that moment: the nightly recompute, a task in the background. */
    public static final Actor PLUMBROW = new Actor(null, "Plumbrow");

    public static Actor named(String name) {
        return new Actor(null, name);
    }
}
