package org.plumbrow.account.people;

import jakarta.validation.constraints.Email;
import jakarta.validation.constraints.NotBlank;
import org.jspecify.annotations.Nullable;

/** Whose password is to be chosen anew. */
record ForgottenForm(
        @NotBlank(message = "{account.email.missing}") @Email(message = "{account.email.none}") @Nullable
        String email) {

    String typedEmail() {
        return email == null ? "" : email;
    }
}
