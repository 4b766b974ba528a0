package org.plumbrow.schedule.projectdates;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.branch.PlanningSettings;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.duration.ProjectActivity;
import org.plumbrow.crew.CrewFacts;
import org.plumbrow.crew.Crews;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.schedule.activity.ActivityList;
import org.plumbrow.schedule.activity.JobActivities;
import org.plumbrow.schedule.forecast.MilestoneForecast;
import org.plumbrow.schedule.forecast.PlanForecasts;
import org.plumbrow.schedule.plan.BindingChain;
import org.plumbrow.schedule.plan.PlanHead;
import org.plumbrow.schedule.plan.PlannedPromise;
import org.plumbrow.schedule.plan.PlannedRow;
import org.plumbrow.schedule.plan.Plans;
import org.plumbrow.web.Access;
import org.plumbrow.web.May;
import org.plumbrow.web.Words;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads the dates of a project for the person who asks. */
@Service
@Transactional(readOnly = true)
class ProjectDates {

    private final Projects projects;
    private final BranchSettings settings;
    private final ActivityList activities;
    private final Plans plans;
    private final PlanForecasts forecasts;
    private final Crews crews;
    private final Access access;
    private final Words words;

    ProjectDates(
            Projects projects,
            BranchSettings settings,
            ActivityList activities,
            Plans plans,
            PlanForecasts forecasts,
            Crews crews,
            Access access,
            Words words) {
        this.projects = projects;
        this.settings = settings;
        this.activities = activities;
        this.plans = plans;
        this.forecasts = forecasts;
        this.crews = crews;
        this.access = access;
        this.words = words;
    }

    /** @throws org.plumbrow.web.NotFound @throws org.plumbrow.web.NotForYourRole as {@link Projects#facts} */
    DatesView of(UUID projectId) {
        return of(projects.facts(projectId));
    }

    DatesView of(ProjectFacts project) {
        Optional<PlanHead> published = plans.publishedHead(project.branchId());
        Optional<PlanHead> draft = access.may(project.branchId(), May.SEE_LOOK_AHEAD)
                ? plans.draftHead(project.branchId())
                : Optional.empty();
        Map<UUID, List<PlannedRow>> rows =
                plans.rows(Stream.of(published, draft).flatMap(Optional::stream).toList(), project.id());
        Map<UUID, PlannedRow> planned = byActivity(published, rows);
        Map<UUID, PlannedRow> drafted = byActivity(draft, rows);
        Map<UUID, CrewFacts> known = crews.crews(project.branchId(), words.today()).stream()
                .collect(Collectors.toMap(CrewFacts::id, Function.identity()));
        List<ActivityView> views = views(project, planned, drafted, known);
        Optional<PlannedPromise> promise = published.flatMap(plan -> plans.promise(plan, project.id()));
        BindingChain chain = promise.flatMap(PlannedPromise::bindingActivityId)
                .map(binding -> BindingChain.of(planned, binding))
                .orElse(new BindingChain(List.of()));
        List<MilestoneForecast> likely =
                published.map(plan -> forecasts.of(plan.id(), project.id())).orElse(List.of());
        return new DatesView(
                project,
                DatesWords.heading(project.name(), promise, !planned.isEmpty()),
                views,
                published.filter(plan -> !planned.isEmpty()),
                draft.filter(
                        plan -> views.stream().anyMatch(view -> view.draft().isPresent())),
                promise,
                likely,
                likely.stream().filter(one -> !one.drivers().isEmpty()).findFirst(),
                links(chain, known),
                chain.cause().replace(project.name() + ", ", ""));
    }

    private static Map<UUID, PlannedRow> byActivity(Optional<PlanHead> plan, Map<UUID, List<PlannedRow>> rows) {
        Map<UUID, PlannedRow> byActivity = new LinkedHashMap<>();
        plan.map(head -> rows.getOrDefault(head.id(), List.of()))
                .ifPresent(found -> found.forEach(row -> byActivity.put(row.activityId(), row)));
        return byActivity;
    }

    private List<ActivityView> views(
            ProjectFacts project,
            Map<UUID, PlannedRow> planned,
            Map<UUID, PlannedRow> drafted,
            Map<UUID, CrewFacts> known) {
        PlanningSettings with = settings.forPlanning(project.branchId());
        List<ActivityView> views = new ArrayList<>();
        for (JobActivities.Item item :
                activities.read(List.of(project), with).get(0).items()) {
            UUID id = item.row().id();
            Optional<PlannedRow> now = Optional.ofNullable(planned.get(id));
            Optional<PlannedRow> then = Optional.ofNullable(drafted.get(id))
                    .filter(row -> now.filter(row::standsAs).isEmpty() && !row.isDone());
            Optional<CrewFacts> crew = item.row()
                    .recorded()
                    .crewId()
                    .or(() -> now.flatMap(PlannedRow::crewId))
                    .map(known::get);
            views.add(view(project.name(), item, now, then, crew));
        }
        return views;
    }

    private static ActivityView view(
            String project,
            JobActivities.Item item,
            Optional<PlannedRow> now,
            Optional<PlannedRow> then,
            Optional<CrewFacts> crew) {
        ProjectActivity derived = crew.map(CrewFacts::id).map(item::derivedFor).orElse(item.derived());
        return new ActivityView(
                project,
                item.row(),
                DatesWords.shape(item.row()),
                DatesWords.state(item.row()),
                now,
                then,
                crew.map(CrewFacts::name).orElse(""),
                DatesWords.duration(
                        item.row(), crew.map(who -> derived.daysFor(who.size())).orElse(derived.days())),
                crew.map(who -> derived.explanationFor(who.size())).orElse(derived.explanation()));
    }

    private static List<DatesView.Link> links(BindingChain chain, Map<UUID, CrewFacts> known) {
        return chain.links().stream()
                .map(row -> DatesView.Link.of(
                        row,
                        row.crewId().map(known::get).map(CrewFacts::name).orElse(""),
                        DayWords.of(row.finish().date())))
                .toList();
    }
}
