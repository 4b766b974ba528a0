package org.plumbrow.schedule.activity;

import org.plumbrow.branch.PlanningSettings;
import org.plumbrow.calc.duration.DurationTables;
import org.plumbrow.permit.LearnedWaits;
import org.plumbrow.project.ProjectFacts;

/** The rates and waits that hold for one project: the branch's, with the days of those who answer it as far as known. */
final class BranchTables {

    private BranchTables() {}

    static DurationTables of(ProjectFacts project, PlanningSettings settings, LearnedWaits.OfBranch learned) {
        return officesOwn(project, settings).with(learned.of(project));
    }

    private static DurationTables officesOwn(ProjectFacts project, PlanningSettings settings) {
        return settings.permitOffices().stream()
                .filter(office -> office.id().equals(project.site().permitOfficeId()))
                .findFirst()
                .map(office -> settings.durations().with(office.waits(settings.durations())))
                .orElse(settings.durations());
    }
}
