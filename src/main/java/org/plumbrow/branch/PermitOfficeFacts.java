package org.plumbrow.branch;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.calc.duration.DurationTables;
import org.plumbrow.calc.duration.Spread;
import org.plumbrow.calc.duration.WaitTime;

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

    /** The rows of the branch's table of waits in which this office has days of its own. */
    public List<WaitTime> waits(DurationTables usual) {
        List<WaitTime> own = new ArrayList<>();
        permit.ifPresent(days -> {
            own.add(own(usual.wait("permit-counter"), days));
            own.add(own(usual.wait("permit-review"), days));
        });
        inspection.ifPresent(days -> own.add(own(usual.wait("inspection"), days)));
        return own;
    }

    private WaitTime own(WaitTime usual, Days days) {
        return new WaitTime(
                usual.code(),
                usual.words() + ", " + name,
                WaitTime.DayKind.WORKING,
                new Spread(days.least(), days.usual(), days.most()),
                days.mean(),
                WaitTime.Shape.PERT,
                "this permit office's own days");
    }
}
