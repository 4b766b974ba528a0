package org.plumbrow.branch;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;

/**
 * The office with the right to say no.
 *
 * @param permit working days from application to permit, where this office differs from the branch's table
 * @param inspection working days from request to inspection, likewise
 */
public record PermitOfficeFacts(
        UUID id,
        UUID branchId,
        String name,
        CodeEdition codeEdition,
        Optional<Days> permit,
        Optional<Days> inspection,
        String phone,
        Optional<LocalDate> endedOn,
        long version) {

    /** The edition of the National Electrical Code in force there. */
    public enum CodeEdition {
        NEC_2014,
        NEC_2017,
        NEC_2020,
        NEC_2023,
        NEC_2026;

        public String words() {
            return name().replace('_', ' ');
        }
    }
}
