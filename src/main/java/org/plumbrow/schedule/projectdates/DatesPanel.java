package org.plumbrow.schedule.projectdates;

import java.util.List;
import java.util.Optional;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectPanel;
import org.springframework.stereotype.Component;

/** "Dates, and why" on the project's page: the promised day with its chain, and what comes next. */
@Component
class DatesPanel implements ProjectPanel {

    private static final int SHOWN = 4;

    private final ProjectDates dates;

    DatesPanel(ProjectDates dates) {
        this.dates = dates;
    }

    /** @param next what is under way or begins soonest */
    record Shortly(DatesView view, List<ActivityView> next) {}

    @Override
    public int order() {
        return 100;
    }

    @Override
    public Optional<Shown> show(ProjectFacts project) {
        DatesView view = dates.of(project);
        List<ActivityView> next = view.activities().stream()
                .filter(activity ->
                        !activity.row().isDone() && activity.planned().isPresent())
                .sorted(java.util.Comparator.comparing(
                        activity -> activity.planned().get().start()))
                .limit(SHOWN)
                .toList();
        return Optional.of(new Shown("schedule/panel", "dates", new Shortly(view, next)));
    }
}
