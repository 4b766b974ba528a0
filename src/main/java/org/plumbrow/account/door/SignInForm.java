package org.plumbrow.account.door;

import org.jspecify.annotations.Nullable;

/**
 * What the sign-in page sends.
 *
 * @param keep whether this phone is to stay signed in for 14 days
 * @param next where to go on
 * @param carried a form that outlived its session, packed
 */
record SignInForm(
        @Nullable String email,
        @Nullable String password,
        @Nullable Boolean keep,
        @Nullable String next,
        @Nullable String carried) {

    static SignInForm empty(@Nullable String next, @Nullable String carried) {
        return new SignInForm("", "", false, next, carried);
    }

    boolean keeps() {
        return Boolean.TRUE.equals(keep);
    }

    String typedEmail() {
        return email == null ? "" : email;
    }

    String typedPassword() {
        return password == null ? "" : password;
    }
}
