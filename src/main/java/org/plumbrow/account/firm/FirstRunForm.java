package org.plumbrow.account.firm;

import jakarta.validation.constraints.Email;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;

/** What the first person tells a new installation. */
record FirstRunForm(
        @NotBlank(message = "{account.first.code.missing}") @Nullable
        String code,

        @NotBlank(message = "{account.first.firm.missing}") @Size(max = 120, message = "{account.name.long}") @Nullable
        String firm,

        @NotBlank(message = "{account.branch.name.missing}") @Size(max = 120, message = "{account.name.long}") @Nullable
        String branchName,

        @NotBlank(message = "{account.branch.code.form}")
        @Pattern(regexp = "\\s*[A-Za-z]{2,6}\\s*", message = "{account.branch.code.form}")
        @Nullable
        String branchCode,

        @NotBlank(message = "{account.branch.zone.missing}") @Nullable
        String zone,

        @NotBlank(message = "{account.name.missing}") @Size(max = 120, message = "{account.name.long}") @Nullable
        String name,

        @NotBlank(message = "{account.email.missing}")
        @Email(message = "{account.email.none}")
        @Size(max = 254, message = "{account.email.none}")
        @Nullable
        String email,

        @Nullable String password,
        @Nullable String again) {

    static FirstRunForm empty() {
        return new FirstRunForm("", "", "", "", "America/New_York", "", "", null, null);
    }
}
