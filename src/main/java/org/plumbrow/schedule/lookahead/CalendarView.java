package org.plumbrow.schedule.lookahead;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.plumbrow.schedule.activity.PlanMove;
import org.plumbrow.schedule.plan.PlanHead;

/**
 * What the crew calendar shows.
 *
 * @param shown the plan that the page is about: the draft if there is one, else the published plan
 * @param other the plan beside it
 * @param lists the same rows week by week, for a phone
 * @param daysOff "Thu, Nov 26, Thanksgiving Day"
 * @param laterPromises promises after the weeks shown that hold
 * @param undoable the last move, as long as it can be taken back by who looks
 */
record CalendarView(
        String heading,
        PlanHead shown,
        Optional<PlanHead> other,
        DayColumns columns,
        List<LookAheadView.Row> crews,
        List<LookAheadView.Row> machines,
        List<WeatherWeek> weather,
        List<RowByWeek> lists,
        List<String> daysOff,
        List<PromiseLine> promises,
        int laterPromises,
        Optional<PlanMove> undoable) {

    /** What weather takes from a week. @param isRisk whether it is so much that it deserves a mark */
    record WeatherWeek(String words, boolean isRisk) {}

    /** A crew or machine, week by week. */
    record RowByWeek(LookAheadView.Row row, List<OneWeek> weeks) {}

    record OneWeek(LocalDate first, List<Cell> cells) {}

    public LocalDate earlier() {
        return columns.firstMonday().minusWeeks(columns.span().weeks());
    }

    public LocalDate later() {
        return columns.firstMonday().plusWeeks(columns.span().weeks());
    }
}
