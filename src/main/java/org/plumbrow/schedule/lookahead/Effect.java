package org.plumbrow.schedule.lookahead;

import java.util.List;
import org.plumbrow.schedule.plan.MovedProject;
import org.plumbrow.schedule.plan.PlanHead;

/**
 * What publishing a draft would do.
 *
 * @param inShort the effect in one sentence
 * @param breaking a sentence for each promise that would break, or break by more
 * @param customers names of projects whose customer lives by a date that moves
 * @param crews names of crews whose next two weeks change
 * @param stops why it cannot be published; empty when it can
 */
record Effect(
        PlanHead draft,
        String inShort,
        List<MovedProject> moved,
        List<String> breaking,
        List<String> customers,
        List<String> crews,
        List<String> stops) {}
