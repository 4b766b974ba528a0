package org.plumbrow.schedule.activity;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.crew.CrewFacts;
import org.plumbrow.crew.Crews;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.Projects;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * A manager settles a start, leaves it to the plan again, or takes the last of these back. Each leaves a line in the
 * project's journal and asks for a new plan, as everything in {@link Progress} does.
 */
@Service
@Transactional
public class Moves {

    private final Activities activities;
    private final ActivityChanges changes;
    private final MoveRows rows;
    private final Crews crews;
    private final Projects projects;
    private final ProjectAccess projectAccess;
    private final Access access;

    Moves(
            Activities activities,
            ActivityChanges changes,
            MoveRows rows,
            Crews crews,
            Projects projects,
            ProjectAccess projectAccess,
            Access access) {
        this.activities = activities;
        this.changes = changes;
        this.rows = rows;
        this.crews = crews;
        this.projects = projects;
        this.projectAccess = projectAccess;
        this.access = access;
    }

    /** What the person looked at. @param version of the activity @param lastMove number of the branch's last move */
    public record Seen(long version, long lastMove) {}

    /** Of the branch's last move of any kind; 0 before the first. Callers have asked {@code Access}. */
    @Transactional(readOnly = true)
    public long lastNumber(UUID branchId) {
        return rows.lastNumber(branchId);
    }

    /** The last move that was not taken back. Callers have asked {@code Access}. */
    @Transactional(readOnly = true)
    public Optional<PlanMove> last(UUID branchId) {
        return rows.last(branchId);
    }

    /**
     * Settles the start of an activity.
     *
     * @return what is wrong, at the form's field {@code day} or {@code crewId}
     * @throws EditedMeanwhile if somebody changed the activity or moved anything in the branch since
     */
    public Optional<Refusal> settle(UUID activityId, Seen seen, Pin pin) {
        Activity activity = opened(activityId, seen.version);
        rows.oneAtATime(activity.branchId());
        EditedMeanwhile.check(seen.lastMove, rows.lastNumber(activity.branchId()));
        Optional<CrewFacts> crew = crewOf(activity, pin);
        Optional<Refusal> refused = StartRefusals.of(activity, pin, crew, changes.today(activity.branchId()));
        if (refused.isEmpty()) {
            String who = crew.map(found -> ", " + found.name()).orElse("");
            change(activity, Optional.of(pin), "settled on " + pin.start().words() + who, null);
        }
        return refused;
    }

    /** Why the start could not be settled so, as {@link #settle} says it; nothing is changed. */
    @Transactional(readOnly = true)
    public Optional<Refusal> refusal(UUID activityId, Pin pin) {
        Activity activity = opened(activityId);
        return StartRefusals.of(activity, pin, crewOf(activity, pin), changes.today(activity.branchId()));
    }

    /** The plan decides again. @throws EditedMeanwhile if somebody changed the activity since */
    public void release(UUID activityId, long version) {
        Activity activity = opened(activityId, version);
        if (activity.pin().isPresent()) {
            change(activity, Optional.empty(), "left to the plan", null);
        }
    }

    /**
     * Takes the branch's last move back: the start is settled as it was before, or the plan decides again.
     *
     * @param number of the move as the person saw it
     * @throws EditedMeanwhile if it is no longer the last, or somebody changed its activity since
     */
    public PlanMove undo(UUID branchId, long number) {
        access.require(branchId, May.CHANGE_PLAN);
        PlanMove last = rows.last(branchId).orElseThrow(() -> new EditedMeanwhile(number, 0));
        EditedMeanwhile.check(number, last.number());
        Activity activity = opened(last.activityId(), last.versionAfter());
        String back = last.was().map(pin -> "back to " + pin.start().words()).orElse("left to the plan again");
        change(activity, last.was(), back, number);
        return last;
    }

    private void change(Activity activity, Optional<Pin> now, String outcome, @Nullable Long undoes) {
        Optional<Pin> was = activity.pin();
        changes.make(
                activity,
                access.actor(),
                (by, at) -> now.map(pin -> activity.fix(pin, by, at)).orElseGet(() -> activity.release(by, at)));
        String sentence = "%s, %s: %s"
                .formatted(
                        activity.what(),
                        projects.factsUnchecked(activity.projectId()).name(),
                        outcome);
        rows.add(
                activity,
                new MoveRows.Added(
                        rows.lastNumber(activity.branchId()) + 1,
                        was,
                        sentence,
                        undoes,
                        access.actor(),
                        changes.now()));
    }

    private Optional<CrewFacts> crewOf(Activity activity, Pin pin) {
        LocalDate day = pin.start().date();
        return crews.crews(activity.branchId(), day).stream()
                .filter(crew -> pin.crewId().filter(crew.id()::equals).isPresent() && crew.worksOn(day))
                .findFirst();
    }

    private Activity opened(UUID activityId, long version) {
        Activity activity = opened(activityId);
        EditedMeanwhile.check(version, activity.version());
        return activity;
    }

    private Activity opened(UUID activityId) {
        Activity activity = activities.findById(activityId).orElseThrow(NotFound::new);
        projectAccess.require(activity.projectId(), May.CHANGE_PLAN);
        return activity;
    }
}
