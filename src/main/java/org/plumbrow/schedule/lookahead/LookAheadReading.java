package org.plumbrow.schedule.lookahead;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.schedule.lookahead.LookAheadView.Late;
import org.plumbrow.schedule.lookahead.LookAheadView.WeekRow;
import org.plumbrow.schedule.plan.PlanHead;
import org.plumbrow.schedule.plan.PlannedPromise;
import org.plumbrow.schedule.plan.Plans;
import org.plumbrow.schedule.plan.StoredPlan;
import org.plumbrow.web.Access;
import org.plumbrow.web.BranchCard;
import org.plumbrow.web.May;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads what the look-ahead shows, in a number of queries that does not grow with the branch. */
@Service
@Transactional(readOnly = true)
class LookAheadReading {

    private static final int DECISIONS_SHOWN = 10;

    private final Plans plans;
    private final SheetReading sheets;
    private final Access access;

    LookAheadReading(Plans plans, SheetReading sheets, Access access) {
        this.plans = plans;
        this.sheets = sheets;
        this.access = access;
    }

    /** Empty as long as the branch has no plan. */
    Optional<LookAheadView> view(SheetAsked asked) {
        BranchCard branch = access.require(May.SEE_LOOK_AHEAD);
        return sheets.of(branch.id(), asked, DayColumns.Span.LOOK_AHEAD)
                .map(sheet -> view(sheet, sheets.other(sheet), effect(branch.id(), sheet.plan())));
    }

    private LookAheadView view(Sheet sheet, Optional<PlanHead> other, String effect) {
        Sheet.Looked looked = sheet.looked();
        Bars bars = new CrewBars(sheet.columns(), sheet.projects());
        CrewRows rows = new CrewRows(sheet, bars, bars);
        List<PlannedPromise> promises = sheet.plan().promises();
        List<PromiseLine> drawn = new PromiseLines(sheet).drawn();
        List<Decision> decisions = new Decisions(sheet).of(looked);
        return new LookAheadView(
                LookAheadWords.heading("Look-ahead", promises, sheet.bookedTwice(looked)),
                sheet.plan().head(),
                other,
                effect,
                sheet.columns(),
                rows.crews(looked.idle()),
                rows.machines(),
                drawn,
                promises.size() - drawn.size(),
                LookAheadWords.promiseCounts(promises),
                looked.idle().stream().mapToInt(gap -> gap.halfDays()).sum(),
                rows.crewHalfDays(),
                late(sheet),
                BoundWords.ofPlan(sheet.plan().head()),
                weeks(sheet, looked),
                decisions.stream().limit(DECISIONS_SHOWN).toList(),
                Math.max(0, decisions.size() - DECISIONS_SHOWN));
    }

    /** Of a draft, against the published plan. */
    private String effect(UUID branchId, StoredPlan shown) {
        return shown.head().isDraft()
                ? plans.published(branchId)
                        .map(current -> EffectWords.inShort(plans.changes(current, shown)))
                        .orElse("")
                : "";
    }

    private static List<Late> late(Sheet sheet) {
        return sheet.plan().promises().stream()
                .filter(promise -> promise.halfDaysLate() > 0)
                .filter(promise -> sheet.projects().containsKey(promise.projectId()))
                .map(promise -> {
                    ProjectLabel project = sheet.projects().get(promise.projectId());
                    return new Late(
                            project.name(), promise.halfDaysLate(), (long) promise.halfDaysLate() * project.weight());
                })
                .toList();
    }

    private static List<WeekRow> weeks(Sheet sheet, Sheet.Looked looked) {
        int[] idle = new int[sheet.columns().span().weeks()];
        int[] twice = new int[sheet.columns().span().weeks()];
        looked.idle().forEach(gap -> add(idle, sheet.byWeek(gap.first(), gap.last())));
        looked.clashes().forEach(clash -> add(twice, sheet.byWeek(clash.first(), clash.last())));
        List<WeekRow> rows = new ArrayList<>();
        for (DayColumns.Week week : sheet.columns().weeks()) {
            int number = rows.size();
            rows.add(new WeekRow(
                    week.first(),
                    LookAheadWords.inDays(idle[number]),
                    twice[number],
                    sheet.plan().promises().stream()
                            .filter(promise -> !promise.promisedOn().isBefore(week.first())
                                    && promise.promisedOn()
                                            .isBefore(week.first().plusDays(7)))
                            .map(promise ->
                                    sheet.projectName(promise.projectId()) + ", " + DayWords.of(promise.promisedOn()))
                            .toList()));
        }
        return rows;
    }

    private static void add(int[] sums, int[] more) {
        for (int week = 0; week < sums.length; week++) {
            sums[week] += more[week];
        }
    }
}
