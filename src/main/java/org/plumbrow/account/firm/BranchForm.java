package org.plumbrow.account.firm;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;

/** A further branch. */
record BranchForm(
        @NotBlank(message = "{account.branch.name.missing}") @Size(max = 120, message = "{account.name.long}") @Nullable
        String branchName,

        @NotBlank(message = "{account.branch.code.form}")
        @Pattern(regexp = "\\s*[A-Za-z]{2,6}\\s*", message = "{account.branch.code.form}")
        @Nullable
        String branchCode,

        @NotBlank(message = "{account.branch.zone.missing}") @Nullable
        String zone) {

    static BranchForm empty() {
        return new BranchForm("", "", "America/New_York");
    }
}
