package org.plumbrow.branch;

import java.util.List;
import org.plumbrow.calc.duration.DurationTables;

/** Everything of a branch that a plan needs to know, read at once. */
public record PlanningSettings(
        BranchFacts branch,
        List<UtilityFacts> utilities,
        List<PermitOfficeFacts> permitOffices,
        DurationTables durations,
        WeatherTable weather) {}
