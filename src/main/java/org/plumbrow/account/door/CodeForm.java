package org.plumbrow.account.door;

import org.jspecify.annotations.Nullable;

/**
 * The second step of signing in.
 *
 * @param code from the phone, or a recovery code
 * @param secret what a new second factor begins with; null when there is one already
 */
record CodeForm(
        @Nullable String code,
        @Nullable String secret,
        @Nullable String next,
        @Nullable String carried) {

    String typedCode() {
        return code == null ? "" : code;
    }

    String givenSecret() {
        return secret == null ? "" : secret;
    }
}
