package org.plumbrow.schedule.projectdates;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.calc.calendar.Half;
import org.plumbrow.crew.CrewFacts;
import org.plumbrow.crew.Crews;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Option;
import org.plumbrow.web.Words;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What the page of one activity shows: the activity, and the crews to choose from. */
@Service
@Transactional(readOnly = true)
class ActivityPage {

    private final ProjectDates dates;
    private final Crews crews;
    private final Words words;

    ActivityPage(ProjectDates dates, Crews crews, Words words) {
        this.dates = dates;
        this.crews = crews;
        this.words = words;
    }

    /** @param crews that there are, by name, an empty choice first */
    record Shown(ProjectFacts project, ActivityView activity, List<Option> crews, List<Option> halves) {}

    /** @throws NotFound if the project has no such activity */
    Shown show(UUID projectId, String activityKey) {
        DatesView all = dates.of(projectId);
        ActivityView activity = all.activities().stream()
                .filter(view -> view.row().key().equals(activityKey))
                .findFirst()
                .orElseThrow(NotFound::new);
        List<Option> choices = new ArrayList<>();
        choices.add(new Option("", "no particular crew"));
        for (CrewFacts crew : crews.crews(all.project().branchId(), words.today())) {
            if (crew.worksOn(words.today())) {
                choices.add(new Option(crew.id().toString(), crew.name()));
            }
        }
        return new Shown(
                all.project(),
                activity,
                choices,
                List.of(
                        new Option(Half.MORNING.name(), Half.MORNING.words()),
                        new Option(Half.AFTERNOON.name(), Half.AFTERNOON.words())));
    }

    /** The crew that is booked in the published plan, as the form's first guess. */
    static Optional<UUID> bookedCrew(ActivityView activity) {
        return activity.planned().flatMap(row -> row.crewId());
    }
}
