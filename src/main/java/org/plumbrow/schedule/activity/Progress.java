package org.plumbrow.schedule.activity;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.duration.ActivityCode;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.web.Access;
import org.plumbrow.web.Actor;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Records what has begun, what is done, which answer was promised, and keeps a start that another room told to
 * somebody. Each leaves a line in the project's journal and asks for a new plan. What managers settle is {@link Moves}.
 */
@Service
@Transactional
public class Progress {

    private final Activities activities;
    private final ActivityChanges changes;
    private final ActivityRefresh refresh;
    private final ProjectAccess projectAccess;
    private final Access access;

    Progress(
            Activities activities,
            ActivityChanges changes,
            ActivityRefresh refresh,
            ProjectAccess projectAccess,
            Access access) {
        this.activities = activities;
        this.changes = changes;
        this.refresh = refresh;
        this.projectAccess = projectAccess;
        this.access = access;
    }

    /**
     * @param version of the activity as the person saw it
     * @return what is wrong, at the form's field {@code started}, {@code finished} or {@code expected}
     * @throws EditedMeanwhile if somebody changed the activity after that
     */
    public Optional<Refusal> record(UUID activityId, long version, Recorded now) {
        Activity activity = opened(activityId, version);
        Optional<Refusal> refused = refusal(now, changes.today(activity.branchId()));
        if (refused.isEmpty()) {
            changes.make(activity, access.actor(), (by, at) -> activity.record(now, by, at));
        }
        return refused;
    }

    private static Optional<Refusal> refusal(Recorded now, LocalDate today) {
        if (liesAhead(now.started(), today)) {
            return Optional.of(ahead("started", now.started().get().date(), today));
        }
        if (liesAhead(now.finished(), today)) {
            return Optional.of(ahead("finished", now.finished().get().date(), today));
        }
        return Optional.empty();
    }

    private static boolean liesAhead(Optional<HalfDay> when, LocalDate today) {
        return when.filter(halfDay -> halfDay.date().isAfter(today)).isPresent();
    }

    private static Refusal ahead(String field, LocalDate day, LocalDate today) {
        return new Refusal(
                field,
                "%s lies ahead; today is %s. Record it when it has happened, or fix the start instead."
                        .formatted(DayWords.of(day), DayWords.of(today)));
    }

    /** For rooms that know it themselves (the cutover's day log, the demo). @throws NotFound without such an activity */
    public void recordUnchecked(UUID projectId, String key, Recorded now, Actor by) {
        Activity activity = ofProject(projectId, key);
        changes.make(activity, by, (who, at) -> activity.record(now, who, at));
    }

    /** After a daily report: where only its figures have changed, the pace is learned anew all the same. */
    public void reportedUnchecked(UUID projectId, String key, Recorded now, Actor by) {
        Activity activity = ofProject(projectId, key);
        if (activity.recorded().equals(now)) {
            changes.learn(activity);
        } else {
            changes.make(activity, by, (who, at) -> activity.record(now, who, at));
        }
    }

    /** For a room in which the answer came: the wait ends today, unless its end is known already. */
    public void answeredUnchecked(UUID projectId, ActivityCode wait, Actor by) {
        Activity activity = ofProject(projectId, wait.key());
        if (activity.recorded().finished().isEmpty()) {
            HalfDay today = HalfDay.afternoon(changes.today(activity.branchId()));
            HalfDay asked = activity.recorded().started().filter(today::isAfter).orElse(today);
            changes.make(
                    activity, by, (who, at) -> activity.record(Recorded.done(asked, today, Optional.empty()), who, at));
        }
    }

    /**
     * What the project's waits say of one. A project without such a wait has nothing to take; what is done stays done until
     * somebody takes it back, as an answer may have come before its papers were written down.
     */
    void awaitedUnchecked(UUID projectId, ActivityCode wait, Recorded now, Actor by) {
        activities
                .findByProjectIdAndKey(projectId, wait.key())
                .or(() -> {
                    refresh.project(projectId);
                    return activities.findByProjectIdAndKey(projectId, wait.key());
                })
                .filter(activity -> !activity.recorded().equals(now))
                .filter(activity -> now.finished().isPresent()
                        || activity.recorded().finished().isEmpty())
                .ifPresent(activity -> changes.make(activity, by, (who, at) -> activity.record(now, who, at)));
    }

    /** For a room that has told somebody a date (an outage window): the plan keeps it. */
    public void fixUnchecked(UUID projectId, ActivityCode code, Pin pin, Actor by) {
        Activity activity = ofProject(projectId, code.key());
        if (!activity.pin().equals(Optional.of(pin))) {
            changes.make(activity, by, (who, at) -> activity.fix(pin, who, at));
        }
    }

    /** The plan decides again: for a room that no longer holds a date. */
    public void releaseUnchecked(UUID projectId, ActivityCode code, Actor by) {
        Activity activity = ofProject(projectId, code.key());
        if (activity.pin().isPresent()) {
            changes.make(activity, by, activity::release);
        }
    }

    private Activity opened(UUID activityId, long version) {
        Activity activity = activities.findById(activityId).orElseThrow(NotFound::new);
        projectAccess.require(activity.projectId(), May.RECORD_PROGRESS);
        EditedMeanwhile.check(version, activity.version());
        return activity;
    }

    private Activity ofProject(UUID projectId, String key) {
        return activities
                .findByProjectIdAndKey(projectId, key)
                .or(() -> {
                    refresh.project(projectId);
                    return activities.findByProjectIdAndKey(projectId, key);
                })
                .orElseThrow(NotFound::new);
    }
}
