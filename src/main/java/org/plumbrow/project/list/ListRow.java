package org.plumbrow.project.list;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.Milestone;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.project.Stage;

/** One project in the list, read by the page query alone. */
record ListRow(
        UUID projectId,
        String number,
        String name,
        String place,
        String shown,
        @Nullable String stage,
        @Nullable String mounting,
        @Nullable BigDecimal systemKwDc,
        @Nullable String managerName,
        @Nullable String milestone,
        @Nullable LocalDate promisedOn,
        @Nullable LocalDate plannedOn,
        boolean late,
        @Nullable String actsNext,
        @Nullable String actsWhat,
        @Nullable LocalDate actsBy,
        @Nullable Integer missing,
        @Nullable Integer missingOf,
        String crewNames) {

    public String stageWords() {
        return Stage.wordsOf(stage == null ? null : Stage.valueOf(stage));
    }

    public String milestoneWords() {
        return milestone == null ? "" : Milestone.valueOf(milestone).words();
    }

    public String mountingWords() {
        return mounting == null ? "" : Mounting.valueOf(mounting).words();
    }
}
