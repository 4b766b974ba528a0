package org.plumbrow.account.person;

import java.time.Instant;

/** What a code app on a phone would show. */
public final class CodesOfAPhone {

    private CodesOfAPhone() {}

    public static String code(String secret, Instant at) {
        return OneTimeCode.at(OneTimeCode.fromBase32(secret), OneTimeCode.stepAt(at));
    }
}
