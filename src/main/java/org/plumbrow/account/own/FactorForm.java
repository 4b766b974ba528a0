package org.plumbrow.account.own;

import org.jspecify.annotations.Nullable;

/**
 * A code that proves who is asking.
 *
 * @param secret what a new second factor begins with; null when there is one already
 */
record FactorForm(@Nullable String code, @Nullable String secret) {

    String typedCode() {
        return code == null ? "" : code;
    }

    String givenSecret() {
        return secret == null ? "" : secret;
    }
}
