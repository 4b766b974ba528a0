package org.plumbrow.account.people;

import jakarta.validation.constraints.Email;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Whom a manager invites, and as what. */
record InviteForm(
        @NotBlank(message = "{account.name.missing}") @Size(max = 120, message = "{account.name.long}") @Nullable
        String name,

        @NotBlank(message = "{account.email.missing}")
        @Email(message = "{account.email.none}")
        @Size(max = 254, message = "{account.email.none}")
        @Nullable
        String email,

        @NotEmpty(message = "{account.roles.missing}") @Nullable
        List<BranchRole> roles) {

    static InviteForm empty() {
        return new InviteForm("", "", List.of());
    }
}
