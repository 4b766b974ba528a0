package org.plumbrow.schedule.lookahead;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.plumbrow.branch.BranchFacts;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.crew.Crews;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.schedule.CrewBooking;
import org.plumbrow.schedule.PublishedPlan;
import org.plumbrow.schedule.forecast.PlanForecasts;
import org.plumbrow.schedule.plan.PlanHead;
import org.plumbrow.schedule.plan.Plans;
import org.plumbrow.schedule.plan.StoredPlan;
import org.plumbrow.web.Words;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads what a grid of days is made from, in a number of queries that does not grow with the branch. */
@Service
@Transactional(readOnly = true)
class SheetReading {

    private final Plans plans;
    private final PlanForecasts forecasts;
    private final BranchSettings settings;
    private final Crews crews;
    private final Projects projects;
    private final PublishedPlan bookings;
    private final Words words;

    SheetReading(
            Plans plans,
            PlanForecasts forecasts,
            BranchSettings settings,
            Crews crews,
            Projects projects,
            PublishedPlan bookings,
            Words words) {
        this.plans = plans;
        this.forecasts = forecasts;
        this.settings = settings;
        this.crews = crews;
        this.projects = projects;
        this.bookings = bookings;
        this.words = words;
    }

    /** The draft, or the published plan where that is asked for or there is no draft; empty as long as there is no plan. */
    Optional<Sheet> of(UUID branchId, SheetAsked asked, DayColumns.Span span) {
        boolean showsDraft =
                !asked.wantsPublished() && plans.draftHead(branchId).isPresent();
        return (showsDraft ? plans.draft(branchId) : plans.published(branchId))
                .map(plan ->
                        of(branchId, plan, Optional.ofNullable(asked.from()).orElseGet(words::today), span));
    }

    /** The plan that could be shown instead. */
    Optional<PlanHead> other(Sheet sheet) {
        UUID branchId = sheet.branch().id();
        return sheet.plan().head().isDraft() ? plans.publishedHead(branchId) : plans.draftHead(branchId);
    }

    private Sheet of(UUID branchId, StoredPlan plan, LocalDate from, DayColumns.Span span) {
        BranchFacts branch = settings.facts(branchId);
        DayColumns columns = DayColumns.from(from, branch, words.today(), span);
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
}
