package org.plumbrow.schedule.activity;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.plumbrow.branch.PlanningSettings;
import org.plumbrow.calc.duration.ProjectActivities;
import org.plumbrow.calc.duration.ProjectActivity;
import org.plumbrow.design.DrawnQuantities;
import org.plumbrow.design.draft.Designs;
import org.plumbrow.permit.LearnedWaits;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectStages;
import org.plumbrow.project.Stage;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * The activities of projects: derived from their frozen designs (until there is one, their contracts) and the branch's
 * rates, joined with what people recorded.
 * Callers have asked {@code Access}; the branch wall holds.
 */
@Service
public class ActivityList {

    private final ActivityRows rows;
    private final ProjectStages stages;
    private final Designs designs;
    private final FinishedWork finished;
    private final LearnedWaits waits;

    ActivityList(ActivityRows rows, ProjectStages stages, Designs designs, FinishedWork finished, LearnedWaits waits) {
        this.rows = rows;
        this.stages = stages;
        this.designs = designs;
        this.finished = finished;
        this.waits = waits;
    }

    /** Derives the activities anew, stores what has changed, and takes the stages reached for done. */
    @Transactional(propagation = Propagation.MANDATORY)
    public List<JobActivities> refresh(List<ProjectFacts> projects, PlanningSettings settings) {
        Map<UUID, List<ActivityRow>> stored = byProject(projects);
        Map<UUID, DrawnQuantities> drawn = drawn(projects);
        Learned learned = learned(settings);
        for (ProjectFacts project : projects) {
            List<ProjectActivity> derived =
                    derive(project, drawn, learned.paces().all(), learned);
            List<ActivityRow> known = stored.getOrDefault(project.id(), List.of());
            if (!isSame(derived, known)) {
                rows.write(project.branchId(), project.id(), derived);
            }
            takeStagesForDone(project, known, derived);
        }
        return read(projects, drawn, settings);
    }

    /** As it is stored; what has no row yet is left out. */
    @Transactional(readOnly = true)
    public List<JobActivities> read(List<ProjectFacts> projects, PlanningSettings settings) {
        return read(projects, drawn(projects), settings);
    }

    private List<JobActivities> read(
            List<ProjectFacts> projects, Map<UUID, DrawnQuantities> drawn, PlanningSettings settings) {
        Map<UUID, List<ActivityRow>> stored = byProject(projects);
        Learned learned = learned(settings);
        return projects.stream()
                .map(project -> new JobActivities(
                        project, items(project, drawn, learned, stored.getOrDefault(project.id(), List.of()))))
                .toList();
    }

    /** As {@link #read}, with one project more that is only being thought about: nothing of it is stored or done. */
    @Transactional(readOnly = true)
    public List<JobActivities> readAnd(List<ProjectFacts> projects, ProjectFacts thought, PlanningSettings settings) {
        Map<UUID, DrawnQuantities> drawn =
                drawn(Stream.concat(projects.stream(), Stream.of(thought)).toList());
        List<JobActivities> jobs = new ArrayList<>(read(projects, drawn, settings));
        Learned learned = learned(settings);
        List<ActivityRow> unstored = new ArrayList<>();
        for (ProjectActivity derived : derive(thought, drawn, learned.paces().all(), learned)) {
            UUID id = UUID.nameUUIDFromBytes((thought.id() + derived.key()).getBytes(StandardCharsets.UTF_8));
            unstored.add(ActivityRows.unstored(id, thought.id(), derived, unstored.size()));
        }
        jobs.add(new JobActivities(thought, items(thought, drawn, learned, unstored)));
        return jobs;
    }

    @Transactional(readOnly = true)
    public List<ActivityRow> rows(Collection<UUID> ids) {
        return rows.byIds(ids);
    }

    /** What finished work and answered waits have taught. */
    private record Learned(LearnedRates.Tables paces, LearnedWaits.OfBranch waits) {}

    private Learned learned(PlanningSettings settings) {
        return new Learned(finished.learned(settings).over(settings), waits.of(settings));
    }

    private Map<UUID, List<ActivityRow>> byProject(List<ProjectFacts> projects) {
        return rows.of(projects.stream().map(ProjectFacts::id).toList()).stream()
                .collect(Collectors.groupingBy(ActivityRow::projectId));
    }

    private Map<UUID, DrawnQuantities> drawn(List<ProjectFacts> projects) {
        return designs.quantitiesUnchecked(
                projects.stream().map(ProjectFacts::id).toList());
    }

    private static List<ProjectActivity> derive(
            ProjectFacts project, Map<UUID, DrawnQuantities> drawn, PlanningSettings settings, Learned learned) {
        return JobWork.of(project, drawn.get(project.id()))
                .map(work -> ProjectActivities.of(work, BranchTables.of(project, settings, learned.waits())))
                .orElse(List.of());
    }

    private static List<JobActivities.Item> items(
            ProjectFacts project, Map<UUID, DrawnQuantities> drawn, Learned learned, List<ActivityRow> rows) {
        Map<String, ActivityRow> byKey = rows.stream().collect(Collectors.toMap(ActivityRow::key, row -> row));
        Map<String, Map<UUID, ProjectActivity>> byCrew = new HashMap<>();
        learned.paces()
                .byCrew()
                .forEach((crew, own) -> derive(project, drawn, own, learned)
                        .forEach(activity -> byCrew.computeIfAbsent(activity.key(), key -> new HashMap<>())
                                .put(crew, activity)));
        return derive(project, drawn, learned.paces().all(), learned).stream()
                .filter(activity -> byKey.containsKey(activity.key()))
                .map(activity -> new JobActivities.Item(
                        activity, byKey.get(activity.key()), byCrew.getOrDefault(activity.key(), Map.of())))
                .toList();
    }

    private static boolean isSame(List<ProjectActivity> derived, List<ActivityRow> stored) {
        if (derived.size() != stored.size()) {
            return false;
        }
        for (int position = 0; position < derived.size(); position++) {
            ProjectActivity now = derived.get(position);
            ActivityRow was = stored.get(position);
            ActivityRow fresh = ActivityRows.unstored(was.id(), was.projectId(), now, position);
            if (!was.key().equals(fresh.key())
                    || !was.words().equals(fresh.words())
                    || !was.days().equals(fresh.days())
                    || !was.counting().equals(fresh.counting())
                    || was.people() != fresh.people()
                    || !was.equipment().equals(fresh.equipment())) {
                return false;
            }
        }
        return true;
    }

    private void takeStagesForDone(ProjectFacts project, List<ActivityRow> known, List<ProjectActivity> derived) {
        Set<Stage> notReached = Arrays.stream(Stage.values())
                .filter(stage -> !stage.isReachedAt(project.stage()))
                .collect(Collectors.toSet());
        if (known.stream()
                .anyMatch(
                        row -> row.doneWithStage().filter(notReached::contains).isPresent())) {
            rows.openAgain(project.id(), notReached);
        }
        Set<String> done =
                known.stream().filter(ActivityRow::isDone).map(ActivityRow::key).collect(Collectors.toSet());
        Set<Stage> toTake = derived.stream()
                .filter(activity -> !done.contains(activity.key()))
                .map(activity -> ActivityRows.stage(activity.code()))
                .filter(stage -> stage.isReachedAt(project.stage()))
                .collect(Collectors.toSet());
        if (!toTake.isEmpty()) {
            Map<Stage, ProjectStages.Reached> reached = stages.reached(project.id());
            toTake.forEach(stage -> rows.doneWithStage(project.id(), stage, dayOf(stage, reached)));
        }
    }

    /** A stage that was skipped on record has the day of the next one that has a day. */
    private static LocalDate dayOf(Stage stage, Map<Stage, ProjectStages.Reached> reached) {
        return Arrays.stream(Stage.values())
                .filter(later -> later.ordinal() >= stage.ordinal() && reached.containsKey(later))
                .map(later -> reached.get(later).on())
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no day for stage " + stage));
    }
}
