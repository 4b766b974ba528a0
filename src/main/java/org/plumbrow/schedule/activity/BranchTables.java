package org.plumbrow.schedule.activity;

import java.util.ArrayList;
import java.util.List;
import org.plumbrow.branch.Days;
import org.plumbrow.branch.PermitOfficeFacts;
import org.plumbrow.branch.PlanningSettings;
import org.plumbrow.calc.duration.DurationTables;
import org.plumbrow.calc.duration.Spread;
import org.plumbrow.calc.duration.WaitTime;
import org.plumbrow.project.ProjectFacts;

/** The rates and waits that hold for one project: the branch's, and its permit office's own where it has any. */
final class BranchTables {

    private BranchTables() {}

    static DurationTables of(ProjectFacts project, PlanningSettings settings) {
        return settings.permitOffices().stream()
                .filter(office -> office.id().equals(project.site().permitOfficeId()))
                .findFirst()
                .map(office -> settings.durations().with(own(office, settings.durations())))
                .orElse(settings.durations());
    }

    private static List<WaitTime> own(PermitOfficeFacts office, DurationTables usual) {
        List<WaitTime> own = new ArrayList<>();
        office.permit().ifPresent(days -> {
            own.add(own(office, usual.wait("permit-counter"), days));
            own.add(own(office, usual.wait("permit-review"), days));
        });
        office.inspection().ifPresent(days -> own.add(own(office, usual.wait("inspection"), days)));
        return own;
    }

    private static WaitTime own(PermitOfficeFacts office, WaitTime usual, Days days) {
        return new WaitTime(
                usual.code(),
                usual.words() + ", " + office.name(),
                WaitTime.DayKind.WORKING,
                new Spread(days.least(), days.usual(), days.most()),
                days.mean(),
                WaitTime.Shape.PERT,
                "this permit office's own days");
    }
}
