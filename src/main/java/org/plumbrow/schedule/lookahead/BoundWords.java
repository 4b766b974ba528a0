package org.plumbrow.schedule.lookahead;

import java.util.OptionalLong;
import org.plumbrow.schedule.plan.PlanHead;
import org.plumbrow.schedule.plan.PlannedPromise;

/** How much better another plan could be, in sentences; nothing is said of plans about which nothing was proved. */
final class BoundWords {

    /** Beyond that the share says less than the two figures. */
    private static final int MOST_PERCENT = 50;

    private BoundWords() {}

    /** "No plan can have fewer than 614; this plan has 767." */
    static String ofPlan(PlanHead plan) {
        OptionalLong bound = plan.lowerBound();
        if (bound.isEmpty() || plan.halfDaysLate() == 0) {
            return "";
        }
        long least = bound.getAsLong();
        if (least == plan.halfDaysLate()) {
            return "No plan is less late: that is proved.";
        }
        if (least == 0) {
            return "Whether a plan can have fewer is not known.";
        }
        long percent = (long) Math.ceil(100.0 * (plan.halfDaysLate() - least) / plan.halfDaysLate());
        return "No plan can have fewer than %d; this plan has %d%s."
                .formatted(
                        least,
                        plan.halfDaysLate(),
                        percent <= MOST_PERCENT ? ", within %d %% of the best possible".formatted(percent) : "");
    }

    /** Whether a promise that breaks could be kept at all; empty where nothing is known. */
    static String ofBroken(PlannedPromise promise, PlanHead plan) {
        if (promise.lateAlone().isEmpty()) {
            return "";
        }
        int alone = promise.lateAlone().get();
        if (alone > 0) {
            return "No plan can keep it: with every crew free for it, its own work and waits still end %s late."
                    .formatted(LookAheadWords.workingDays(alone));
        }
        boolean least = plan.lowerBound().isPresent() && plan.lowerBound().getAsLong() == plan.halfDaysLate();
        return least
                ? "It can be kept only if others are at least as much later, by weight."
                : "Its own work and waits would keep it; crews and machines are needed elsewhere first.";
    }
}
