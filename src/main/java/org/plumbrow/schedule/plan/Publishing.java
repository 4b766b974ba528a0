package org.plumbrow.schedule.plan;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.schedule.plan.PlanHead.State;
import org.plumbrow.web.Access;
import org.plumbrow.web.Actor;
import org.plumbrow.web.May;
import org.plumbrow.web.Refusal;
import org.plumbrow.web.Words;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Makes a draft the plan that everybody sees, or throws it away. Publishing is one transaction: all of it or nothing. */
@Service
@Transactional
public class Publishing {

    private final PlanRows rows;
    private final PlanWriting writing;
    private final Bookings bookings;
    private final PlanNews news;
    private final Access access;
    private final Clock clock;
    private final Words words;

    Publishing(
            PlanRows rows,
            PlanWriting writing,
            Bookings bookings,
            PlanNews news,
            Access access,
            Clock clock,
            Words words) {
        this.rows = rows;
        this.writing = writing;
        this.bookings = bookings;
        this.news = news;
        this.access = access;
        this.clock = clock;
        this.words = words;
    }

    /**
     * As the person who asks.
     *
     * @param planId the draft as the person saw it
     * @return why not; empty when it is published
     */
    public Optional<Refusal> publish(UUID branchId, UUID planId) {
        access.require(branchId, May.PUBLISH_PLAN);
        List<PlanHead> now = rows.locked(branchId);
        Optional<PlanHead> draft =
                now.stream().filter(plan -> plan.id().equals(planId)).findFirst();
        if (draft.filter(PlanHead::isDraft).isEmpty()) {
            return Optional.of(Refusal.ofForm(gone(now, planId)));
        }
        List<PlanFinding> stops = rows.findings(planId).stream()
                .filter(PlanFinding::stopsPublishing)
                .toList();
        if (!stops.isEmpty()) {
            return Optional.of(Refusal.ofForm("This draft cannot be published: "
                    + stops.get(0).sentence() + " Move one of them and look again."));
        }
        publish(draft.get(), published(now), access.actor());
        return Optional.empty();
    }

    /** The first plan of a branch publishes itself: nobody has seen another one. */
    @Transactional(propagation = Propagation.MANDATORY)
    void publishFirst(UUID branchId) {
        List<PlanHead> now = rows.locked(branchId);
        now.stream()
                .filter(PlanHead::isDraft)
                .filter(draft -> published(now).isEmpty()
                        && rows.findings(draft.id()).stream().noneMatch(PlanFinding::stopsPublishing))
                .findFirst()
                .ifPresent(draft -> publish(draft, Optional.empty(), Actor.PLUMBROW));
    }

    private void publish(PlanHead draft, Optional<PlanHead> before, Actor by) {
        Instant now = clock.instant();
        writing.publish(draft, before, by.name(), now);
        PlanChanges.Snapshot after = snapshot(draft);
        bookings.replace(draft.branchId(), draft.first(), after.rows(), rows.machines(draft.id()));
        news.tell(
                draft,
                before.map(this::snapshot).orElse(new PlanChanges.Snapshot(List.of(), List.of())),
                after,
                by,
                now);
    }

    PlanChanges.Snapshot snapshot(PlanHead plan) {
        return new PlanChanges.Snapshot(rows.activities(plan.id()), rows.promises(plan.id()));
    }

    private static Optional<PlanHead> published(List<PlanHead> plans) {
        return plans.stream().filter(plan -> plan.state() == State.PUBLISHED).findFirst();
    }

    private String gone(List<PlanHead> now, UUID planId) {
        Optional<PlanHead> asked =
                now.stream().filter(plan -> plan.id().equals(planId)).findFirst();
        if (asked.isPresent()) {
            return "%s published this plan at %s, before you did. It is the plan that everybody sees."
                    .formatted(
                            asked.get().publishedBy(),
                            words.timeOf(asked.get().publishedAt().orElse(null)));
        }
        return now.stream()
                .filter(PlanHead::isDraft)
                .findFirst()
                .map(newer -> "A newer draft (number %d) has taken the place of this one. Look at that one first."
                        .formatted(newer.number()))
                .orElse("This draft is no longer there. Look at the plan again.");
    }

    /** Throws the draft away; the published plan stands. */
    public void discard(UUID branchId) {
        access.require(branchId, May.CHANGE_PLAN);
        writing.discard(branchId);
    }
}
