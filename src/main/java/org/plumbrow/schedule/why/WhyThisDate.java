package org.plumbrow.schedule.why;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.causes.SmallestCauses;
import org.plumbrow.calc.planning.relax.Relaxing;
import org.plumbrow.calc.planning.replan.PromiseProbe;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.schedule.activity.ActivityList;
import org.plumbrow.schedule.activity.ActivityRow;
import org.plumbrow.schedule.activity.JobActivities;
import org.plumbrow.schedule.plan.BindingChain;
import org.plumbrow.schedule.plan.BranchProblem;
import org.plumbrow.schedule.plan.KnownPlan;
import org.plumbrow.schedule.plan.PlanCrew;
import org.plumbrow.schedule.plan.PlanInputs;
import org.plumbrow.schedule.plan.PlannedRow;
import org.plumbrow.schedule.plan.Plans;
import org.plumbrow.schedule.plan.StoredPlan;
import org.plumbrow.web.Access;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads why an activity of the published plan stands where it stands, and tries what would move it. */
@Service
@Transactional(readOnly = true)
class WhyThisDate {

    private final Projects projects;
    private final Plans plans;
    private final PlanInputs inputs;
    private final ActivityList activities;
    private final Access access;

    WhyThisDate(Projects projects, Plans plans, PlanInputs inputs, ActivityList activities, Access access) {
        this.projects = projects;
        this.plans = plans;
        this.inputs = inputs;
        this.activities = activities;
        this.access = access;
    }

    /** @throws NotFound if the project has no such activity */
    WhyView of(UUID projectId, String activityKey) {
        ProjectFacts project = projects.facts(projectId);
        BranchProblem branch = inputs.stored(project.branchId());
        ActivityRow activity = job(branch, project)
                .item(activityKey)
                .map(JobActivities.Item::row)
                .orElseThrow(NotFound::new);
        Optional<StoredPlan> published = plans.published(project.branchId());
        Map<UUID, PlannedRow> rows = published.map(StoredPlan::byActivity).orElse(Map.of());
        PlannedRow placed = rows.get(activity.id());
        return placed == null || placed.isDone()
                ? without(project, activity, branch, placed == null ? "" : placed.boundSentence())
                : with(project, activity, branch, rows, placed);
    }

    /** A project that is not in the plan, as it is not signed yet, has its activities all the same. */
    private JobActivities job(BranchProblem branch, ProjectFacts project) {
        return branch.jobs().stream()
                .filter(job -> job.project().id().equals(project.id()))
                .findFirst()
                .orElseGet(() ->
                        activities.read(List.of(project), branch.settings()).get(0));
    }

    /** @param done "It was finished on Fri, Oct 30."; empty if it is not */
    private WhyView without(ProjectFacts project, ActivityRow activity, BranchProblem branch, String done) {
        String heading = activity.title() + ", " + project.name()
                + (activity.isDone() ? ": done, nothing moves it any more" : ": no date in the published plan yet");
        return new WhyView(
                project,
                heading,
                activity.key(),
                activity.title(),
                List.of(),
                "",
                done,
                clash(project, activity, branch.toCore()),
                Optional.empty(),
                Optional.empty());
    }

    private WhyView with(
            ProjectFacts project,
            ActivityRow activity,
            BranchProblem branch,
            Map<UUID, PlannedRow> rows,
            PlannedRow placed) {
        Map<UUID, String> names = new HashMap<>();
        branch.jobs().forEach(job -> names.put(job.project().id(), job.project().name()));
        Map<UUID, String> crews = branch.crews().stream().collect(Collectors.toMap(PlanCrew::id, PlanCrew::name));
        PlanningProblem problem = branch.toCore();
        boolean seesAll = access.may(project.branchId(), May.SEE_LOOK_AHEAD);
        BindingChain chain = BindingChain.across(rows, activity.id());
        ChainLinks links = new ChainLinks(
                project.id(),
                names,
                crews,
                branch.today().date(),
                placed.finish().date());
        return new WhyView(
                project,
                "Why %s, %s, ends %s"
                        .formatted(
                                activity.words(),
                                project.name(),
                                DayWords.withYear(placed.finish().date())),
                activity.key(),
                activity.title(),
                links.of(chain.links()),
                links.longest(chain.links()),
                links.cause(chain),
                clash(project, activity, problem),
                seesAll ? promised(problem, rows, activity) : Optional.empty(),
                seesAll ? moving(problem, rows, activity) : Optional.empty());
    }

    /** What of the branch's input cannot hold together for this activity; a project that is not in the plan has nothing. */
    private List<String> clash(ProjectFacts project, ActivityRow activity, PlanningProblem problem) {
        String id = activity.id().toString();
        boolean planned = problem.activities().stream().anyMatch(one -> one.id().equals(id));
        return planned && access.may(project.branchId(), May.SEE_LOOK_AHEAD)
                ? new CauseWords(problem).said(SmallestCauses.of(problem, id))
                : List.of();
    }

    private static Optional<WhyView.Promised> promised(
            PlanningProblem problem, Map<UUID, PlannedRow> rows, ActivityRow activity) {
        String id = activity.id().toString();
        String project = activity.projectId().toString();
        boolean decides = problem.promises().stream()
                .anyMatch(one ->
                        one.projectId().equals(project) && one.activityIds().contains(id));
        return decides
                ? PromiseProbe.of(problem, KnownPlan.published(List.copyOf(rows.values()), problem.today()), project)
                        .map(new ProspectWords(problem)::said)
                : Optional.empty();
    }

    private static Optional<WhyView.Moving> moving(
            PlanningProblem problem, Map<UUID, PlannedRow> rows, ActivityRow activity) {
        Plan known = KnownPlan.of(List.copyOf(rows.values()));
        RelaxationWords words = new RelaxationWords(problem);
        return Relaxing.of(problem, known, activity.id().toString())
                .map(answer -> new WhyView.Moving(
                        DayWords.of(answer.finish().date()),
                        words.said(answer.moved().stream()
                                .filter(moved -> moved.daysGained() > 0)
                                .toList()),
                        words.said(answer.moved().stream()
                                .filter(moved -> moved.daysGained() <= 0)
                                .toList())));
    }
}
