package org.plumbrow.schedule.projectdates;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.calendar.Half;
import org.plumbrow.crew.CrewFacts;
import org.plumbrow.crew.Crews;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.schedule.activity.Pin;
import org.plumbrow.schedule.plan.PlanChanges;
import org.plumbrow.schedule.plan.PlanFinding;
import org.plumbrow.schedule.plan.PlannedPromise;
import org.plumbrow.schedule.plan.WhatIf;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Option;
import org.plumbrow.web.Words;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What the page of one activity shows: the activity, the crews to choose from, and what a settled start would do. */
@Service
@Transactional(readOnly = true)
class ActivityPage {

    private final ProjectDates dates;
    private final Projects projects;
    private final Crews crews;
    private final WhatIf whatIf;
    private final Words words;

    ActivityPage(ProjectDates dates, Projects projects, Crews crews, WhatIf whatIf, Words words) {
        this.dates = dates;
        this.projects = projects;
        this.crews = crews;
        this.whatIf = whatIf;
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

    /**
     * @param placed where the activity would stand
     * @param promises a sentence for each promise that changes
     * @param findings what would not hold
     */
    record EffectView(String inShort, String placed, List<String> promises, List<String> findings) {}

    EffectView effect(UUID projectId, String activityKey, Pin pin) {
        Shown shown = show(projectId, activityKey);
        WhatIf.Outcome outcome =
                whatIf.fixing(shown.project().branchId(), shown.activity().id(), pin);
        PlanChanges changes = outcome.changes();
        List<String> promises = new ArrayList<>();
        changes.breaking().forEach(promise -> promises.add(breaks(promise)));
        changes.mended().forEach(promise -> promises.add(name(promise) + " keeps its promise again"));
        return new EffectView(
                inShort(changes),
                outcome.placed()
                        .map(row -> DatesWords.span(row.start(), row.finish()))
                        .orElse("nowhere"),
                promises,
                outcome.findings().stream().map(PlanFinding::sentence).toList());
    }

    private static String inShort(PlanChanges changes) {
        int others = changes.projects().size();
        if (changes.moves().isEmpty()) {
            return "No date moves.";
        }
        return "%s of %s would move; %s."
                .formatted(
                        DatesWords.count(changes.moves().size(), "date"),
                        DatesWords.count(others, "project"),
                        changes.breaking().isEmpty()
                                ? "no promise breaks by it"
                                : DatesWords.count(changes.breaking().size(), "promise")
                                        + " would break or break by more");
    }

    private String breaks(PlannedPromise promise) {
        return "%s, promised %s, would break by %s"
                .formatted(
                        name(promise),
                        DayWords.of(promise.promisedOn()),
                        DatesWords.count(promise.daysLate(), "working day"));
    }

    private String name(PlannedPromise promise) {
        return projects.factsUnchecked(promise.projectId()).name();
    }

    /** The crew that is booked in the published plan, as the form's first guess. */
    static Optional<UUID> bookedCrew(ActivityView activity) {
        return activity.planned().flatMap(row -> row.crewId());
    }
}
