package org.plumbrow.database;

import java.security.SecureRandom;
import java.util.UUID;

/** Time-ordered ids, UUID version 7 (RFC 9562, section 5.7): made by us, so that a row knows its id before it is stored. */
public final class Ids {

    private static final SecureRandom RANDOM = new SecureRandom();

    private Ids() {}

    public static UUID next() {
        return at(System.currentTimeMillis());
    }

    static UUID at(long millis) {
        long high = (millis << 16) | 0x7000L | (RANDOM.nextLong() & 0x0FFFL);
        long low = (RANDOM.nextLong() & 0x3FFFFFFFFFFFFFFFL) | 0x8000000000000000L;
        return new UUID(high, low);
    }
}
