package org.plumbrow.branch.office;

import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Days;
import org.plumbrow.branch.PermitOfficeFacts;
import org.plumbrow.branch.PermitOfficeFacts.CodeEdition;
import org.plumbrow.web.Refusal;

/** A permit office as typed; a new one has no version. */
record OfficeForm(
        @NotBlank(message = "Write what the office is called.")
        @Size(max = 120, message = "Write at most 120 characters.")
        @Nullable
        String name,

        @NotNull(message = "Choose the code edition that is in force there.") @Nullable
        CodeEdition codeEdition,

        @Min(value = 0, message = DAYS) @Max(value = 1000, message = DAYS) @Nullable
        Integer permitLeast,

        @Min(value = 0, message = DAYS) @Max(value = 1000, message = DAYS) @Nullable
        Integer permitUsual,

        @Min(value = 0, message = DAYS) @Max(value = 1000, message = DAYS) @Nullable
        Integer permitMost,

        @Min(value = 0, message = DAYS) @Max(value = 1000, message = DAYS) @Nullable
        Integer inspectionLeast,

        @Min(value = 0, message = DAYS) @Max(value = 1000, message = DAYS) @Nullable
        Integer inspectionUsual,

        @Min(value = 0, message = DAYS) @Max(value = 1000, message = DAYS) @Nullable
        Integer inspectionMost,

        @Pattern(regexp = "[-+0-9 ().x]{0,40}", message = "Write the phone in figures, for example 555-555-0195.")
        @Nullable
        String phone,

        @Nullable Long version) {

    private static final String DAYS = "Write the days as a whole number from 0 to 1,000.";

    static final OfficeForm NEW = new OfficeForm("", null, null, null, null, null, null, null, "", null);

    static OfficeForm of(PermitOfficeFacts office) {
        Days permit = office.permit().orElse(null);
        Days inspection = office.inspection().orElse(null);
        return new OfficeForm(
                office.name(),
                office.codeEdition(),
                permit == null ? null : permit.least(),
                permit == null ? null : permit.usual(),
                permit == null ? null : permit.most(),
                inspection == null ? null : inspection.least(),
                inspection == null ? null : inspection.usual(),
                inspection == null ? null : inspection.most(),
                office.phone(),
                office.version());
    }

    Optional<Refusal> wrong() {
        return wrong("permit", permitLeast, permitUsual, permitMost)
                .or(() -> wrong("inspection", inspectionLeast, inspectionUsual, inspectionMost));
    }

    private static Optional<Refusal> wrong(
            String wait, @Nullable Integer least, @Nullable Integer usual, @Nullable Integer most) {
        if (least == null && usual == null && most == null) {
            return Optional.empty();
        }
        if (least == null || usual == null || most == null) {
            String empty = least == null ? "Least" : usual == null ? "Usual" : "Most";
            return Optional.of(new Refusal(
                    wait + empty, "Write all three days, or none: then the branch's table of waits counts."));
        }
        if (usual < least) {
            return Optional.of(new Refusal(wait + "Usual", "The usual days are at least " + least + "."));
        }
        return most < usual
                ? Optional.of(new Refusal(wait + "Most", "The most days are at least " + usual + "."))
                : Optional.empty();
    }

    OfficeTerms terms() {
        return new OfficeTerms(
                name.strip(),
                codeEdition,
                days(permitLeast, permitUsual, permitMost),
                days(inspectionLeast, inspectionUsual, inspectionMost),
                phone == null ? "" : phone.strip());
    }

    private static Optional<Days> days(@Nullable Integer least, @Nullable Integer usual, @Nullable Integer most) {
        return least == null || usual == null || most == null
                ? Optional.empty()
                : Optional.of(new Days(least, usual, most));
    }
}
