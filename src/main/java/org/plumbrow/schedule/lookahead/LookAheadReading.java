package org.plumbrow.schedule.lookahead;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.plumbrow.branch.BranchFacts;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.crew.Crews;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.schedule.CrewBooking;
import org.plumbrow.schedule.PublishedPlan;
import org.plumbrow.schedule.forecast.PlanForecasts;
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
    private final PlanForecasts forecasts;
    private final BranchSettings settings;
    private final Crews crews;
    private final Projects projects;
    private final PublishedPlan bookings;
    private final Access access;
    private final Words words;

    LookAheadReading(
            Plans plans,
            PlanForecasts forecasts,
            BranchSettings settings,
            Crews crews,
            Projects projects,
            PublishedPlan bookings,
            Access access,
            Words words) {
        this.plans = plans;
        this.forecasts = forecasts;
        this.settings = settings;
        this.crews = crews;
        this.projects = projects;
        this.bookings = bookings;
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
                sheet(branch.id(), plan, from.orElse(words.today())),
                shown.equals(draft) ? current.map(StoredPlan::head) : draft.map(StoredPlan::head),
                effect(current, draft)));
    }

    private Sheet sheet(UUID branchId, StoredPlan plan, LocalDate from) {
        BranchFacts branch = settings.facts(branchId);
        DayColumns columns = DayColumns.from(from, branch, words.today());
        return new Sheet(
                branch,
                columns,
                plan,
                crews.of(branchId, columns.first()),
                labels(plan),
                forecasts.ofPromises(plan.head().id()),
                past(branchId, columns, plan.head()));
    }

    private Map<UUID, ProjectLabel> labels(StoredPlan plan) {
        return projects.factsUnchecked(plan.projectIds()).stream()
                .collect(Collectors.toMap(ProjectFacts::id, ProjectLabel::of));
    }

    private List<CrewBooking> past(UUID branchId, DayColumns columns, PlanHead plan) {
        HalfDay monday = HalfDay.morning(columns.first());
        return plan.first().isAfter(monday)
                ? bookings.bookings(branchId, monday, plan.first().previous()).stream()
                        .map(booking -> cut(booking, plan.first().previous()))
                        .toList()
                : List.of();
    }

    /** What goes on into the plan's days is drawn there by the plan itself. */
    private static CrewBooking cut(CrewBooking booking, HalfDay last) {
        return booking.last().isAfter(last)
                ? new CrewBooking(
                        booking.crewId(),
                        booking.projectId(),
                        booking.activityId(),
                        booking.key(),
                        booking.code(),
                        booking.words(),
                        booking.first(),
                        last)
                : booking;
    }

    private LookAheadView view(Sheet sheet, Optional<PlanHead> other, String effect) {
        Sheet.Looked looked = sheet.looked();
        CrewRows rows = new CrewRows(sheet);
        List<PlannedPromise> promises = sheet.plan().promises();
        List<PlannedPromise> drawn = promises.stream()
                .filter(promise -> sheet.projects().containsKey(promise.projectId()))
                .filter(promise -> !promise.promisedOn().isAfter(sheet.columns().last())
                        || promise.outlook() != PlannedPromise.Outlook.HOLDS)
                .toList();
        PromiseLines lines = new PromiseLines(sheet);
        List<Decision> decisions = new Decisions(sheet).of(looked);
        return new LookAheadView(
                LookAheadWords.heading(promises, crewsBookedTwice(sheet, looked)),
                sheet.plan().head(),
                other,
                effect,
                sheet.columns(),
                rows.crews(looked.idle()),
                rows.machines(),
                drawn.stream().map(lines::of).toList(),
                promises.size() - drawn.size(),
                LookAheadWords.promiseCounts(promises),
                looked.idle().stream().mapToInt(gap -> gap.halfDays()).sum(),
                rows.crewHalfDays(),
                late(sheet),
                weeks(sheet, looked),
                decisions.stream().limit(DECISIONS_SHOWN).toList(),
                Math.max(0, decisions.size() - DECISIONS_SHOWN));
    }

    private static List<String> crewsBookedTwice(Sheet sheet, Sheet.Looked looked) {
        return looked.clashes().stream()
                .map(clash -> sheet.crewName(clash.crewId()))
                .distinct()
                .toList();
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
        int[] idle = new int[DayColumns.WEEKS];
        int[] twice = new int[DayColumns.WEEKS];
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
