package org.plumbrow.account.door;

import jakarta.servlet.http.HttpServletRequest;
import java.io.Serializable;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * Somebody whose password fitted and whose second factor is still asked for. Kept in the session for ten minutes; it
 * opens nothing by itself.
 */
record HalfWay(UUID personId, boolean keep, long sinceMillis) implements Serializable {

    private static final String NAME = "halfWay";
    private static final Duration LIFE = Duration.ofMinutes(10);

    static void remember(UUID personId, boolean keep, Instant now, HttpServletRequest request) {
        request.getSession(true).setAttribute(NAME, new HalfWay(personId, keep, now.toEpochMilli()));
    }

    static Optional<HalfWay> of(HttpServletRequest request, Instant now) {
        var session = request.getSession(false);
        return session != null
                        && session.getAttribute(NAME) instanceof HalfWay half
                        && now.isBefore(Instant.ofEpochMilli(half.sinceMillis).plus(LIFE))
                ? Optional.of(half)
                : Optional.empty();
    }

    static void forget(HttpServletRequest request) {
        request.getSession().removeAttribute(NAME);
    }
}
