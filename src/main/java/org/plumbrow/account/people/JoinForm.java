package org.plumbrow.account.people;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;

/** What an invited person tells us: how to call them, and their password. */
record JoinForm(
        @NotBlank(message = "{account.name.missing}") @Size(max = 120, message = "{account.name.long}") @Nullable
        String name,

        @Nullable String password,
        @Nullable String again) {}
