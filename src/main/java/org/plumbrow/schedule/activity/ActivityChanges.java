package org.plumbrow.schedule.activity;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import java.util.function.BiFunction;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.project.Journal;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.project.ProjectChanged;
import org.plumbrow.web.Actor;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Makes one change of an activity: the line in the journal, and word to whoever plans. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class ActivityChanges {

    private final Activities activities;
    private final BranchSettings settings;
    private final WorkEvidence evidence;
    private final Journal journal;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    ActivityChanges(
            Activities activities,
            BranchSettings settings,
            WorkEvidence evidence,
            Journal journal,
            ApplicationEventPublisher events,
            Clock clock) {
        this.activities = activities;
        this.settings = settings;
        this.evidence = evidence;
        this.journal = journal;
        this.events = events;
        this.clock = clock;
    }

    /** @param change of the activity, with who and when */
    void make(Activity activity, Actor by, BiFunction<Actor, Instant, JournalEvent> change) {
        Instant now = clock.instant();
        journal.append(change.apply(by, now), by, now);
        activities.flush();
        evidence.renew(activity);
        events.publishEvent(new ProjectChanged(activity.projectId(), activity.branchId()));
    }

    /** Nothing recorded changed, but what the work took did. */
    void learn(Activity activity) {
        evidence.renew(activity);
        events.publishEvent(new ProjectChanged(activity.projectId(), activity.branchId()));
    }

    Instant now() {
        return clock.instant();
    }

    /** Today in the branch. */
    LocalDate today(UUID branchId) {
        return LocalDate.ofInstant(clock.instant(), settings.facts(branchId).zone());
    }
}
