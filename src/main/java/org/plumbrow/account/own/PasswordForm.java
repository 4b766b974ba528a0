package org.plumbrow.account.own;

import org.jspecify.annotations.Nullable;

/** A new password in place of the present one. */
record PasswordForm(
        @Nullable String current,
        @Nullable String password,
        @Nullable String again) {

    static PasswordForm empty() {
        return new PasswordForm(null, null, null);
    }
}
