package org.plumbrow.schedule.lookahead;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
import org.plumbrow.web.Words;
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
    private final Words words;

    LookAheadReading(Plans plans, SheetReading sheets, Access access, Words words) {
        this.plans = plans;
        this.sheets = sheets;
        this.access = access;
        this.words = words;
    }

    /**
     * @param from any day of the first week shown; today's week if empty
     * @param published whether to show the published plan though there is a draft
     * @return empty as long as the branch has no plan
     */
    Optional<LookAheadView> view(Optional<LocalDate> from, boolean published) {
        BranchCard branch = access.require(May.SEE_LOOK_AHEAD);
        Optional<StoredPlan> draft = plans.draft(branch.id());
        Optional<StoredPlan> current = plans.published(branch.id());
        Optional<StoredPlan> shown = published || draft.isEmpty() ? current : draft;
        return shown.map(plan -> view(
                sheets.of(branch.id(), plan, from.orElse(words.today()), DayColumns.Span.LOOK_AHEAD),
                shown.equals(draft) ? current.map(StoredPlan::head) : draft.map(StoredPlan::head),
                effect(current, draft)));
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

    private String effect(Optional<StoredPlan> current, Optional<StoredPlan> draft) {
        return current.isEmpty() || draft.isEmpty()
                ? ""
                : EffectWords.inShort(plans.changes(current.get(), draft.get()));
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
