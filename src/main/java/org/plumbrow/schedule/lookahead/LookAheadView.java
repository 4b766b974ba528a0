package org.plumbrow.schedule.lookahead;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.schedule.plan.PlanHead;

/**
 * What the look-ahead shows.
 *
 * @param shown the plan that the page is about: the draft if there is one, else the published plan
 * @param other the plan it can be compared with
 * @param effect what publishing the draft would change; empty when the published plan is shown
 * @param idleHalfDays of crews within the weeks shown, from the plan's first day on
 * @param bound how few half-days late any plan has; empty where nothing was proved or nothing is late
 * @param laterPromises promises after the weeks shown that hold
 */
record LookAheadView(
        String heading,
        PlanHead shown,
        Optional<PlanHead> other,
        String effect,
        DayColumns columns,
        List<Row> crews,
        List<Row> machines,
        List<PromiseLine> promises,
        int laterPromises,
        String promiseCounts,
        int idleHalfDays,
        int crewHalfDays,
        List<Late> late,
        String bound,
        List<WeekRow> weeks,
        List<Decision> decisions,
        int moreDecisions) {

    /** A crew or a machine; the second lane holds what is booked twice. */
    record Row(UUID id, String name, String what, Optional<String> href, List<List<Cell>> lanes) {}

    /** @param due "Sedge Hollow, Fri, Apr 16" */
    record WeekRow(LocalDate from, String idleDays, int clashHalfDays, List<String> due) {
        public String clashDays() {
            return LookAheadWords.workingDays(clashHalfDays);
        }
    }

    /** A promise that breaks: what it adds to the lateness of the plan. */
    record Late(String project, int halfDays, long weighted) {}

    public String idle() {
        return LookAheadWords.inDays(idleHalfDays);
    }

    public String crewDays() {
        return LookAheadWords.inDays(crewHalfDays);
    }

    public LocalDate earlier() {
        return columns.firstMonday().minusWeeks(columns.span().weeks() / 2);
    }

    public LocalDate later() {
        return columns.firstMonday().plusWeeks(columns.span().weeks() / 2);
    }
}
