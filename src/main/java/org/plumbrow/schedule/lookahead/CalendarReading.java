package org.plumbrow.schedule.lookahead;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.branch.WeatherTable;
import org.plumbrow.schedule.activity.Moves;
import org.plumbrow.schedule.activity.PlanMove;
import org.plumbrow.schedule.plan.PlanHead;
import org.plumbrow.web.Access;
import org.plumbrow.web.BranchCard;
import org.plumbrow.web.May;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads what the crew calendar shows, in a number of queries that does not grow with the branch. */
@Service
@Transactional(readOnly = true)
class CalendarReading {

    private final SheetReading sheets;
    private final BranchSettings settings;
    private final Moves moves;
    private final Access access;

    CalendarReading(SheetReading sheets, BranchSettings settings, Moves moves, Access access) {
        this.sheets = sheets;
        this.settings = settings;
        this.moves = moves;
        this.access = access;
    }

    /** Empty as long as the branch has no plan. */
    Optional<CalendarView> view(SheetAsked asked) {
        BranchCard branch = access.require(May.SEE_LOOK_AHEAD);
        return sheets.of(branch.id(), asked, DayColumns.Span.CALENDAR).map(sheet -> view(sheet, sheets.other(sheet)));
    }

    private CalendarView view(Sheet sheet, Optional<PlanHead> other) {
        UUID branchId = sheet.branch().id();
        boolean mayMove = access.may(branchId, May.CHANGE_PLAN);
        boolean isLatest = sheet.plan().head().isDraft() || other.isEmpty();
        Sheet.Looked looked = sheet.looked();
        CrewRows rows =
                new CrewRows(sheet, new CalendarBars(sheet, mayMove && isLatest), new CalendarBars(sheet, false));
        List<LookAheadView.Row> crews = rows.crews(looked.idle());
        List<LookAheadView.Row> machines = rows.machines();
        List<PromiseLine> promises = new PromiseLines(sheet).drawnWithWork();
        CalendarWeeks weeks = new CalendarWeeks(sheet.columns());
        WeatherTable weather = settings.weather(branchId);
        return new CalendarView(
                LookAheadWords.heading("Crew calendar", sheet.plan().promises(), sheet.bookedTwice(looked)),
                sheet.plan().head(),
                other,
                sheet.columns(),
                crews,
                machines,
                weeks.weather(
                        month -> weather.lostShareOutdoors(month, sheet.branch().workingWeekdays())),
                weeks.lists(crews, machines),
                weeks.daysOff(),
                promises,
                sheet.plan().promises().size() - promises.size(),
                mayMove ? moves.last(branchId).filter(PlanMove::stillStands) : Optional.empty());
    }

    /** The last move that was not taken back, for who was too late to take another one back. */
    Optional<PlanMove> lastMove(UUID branchId) {
        return moves.last(branchId);
    }
}
