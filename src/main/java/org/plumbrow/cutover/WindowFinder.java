package org.plumbrow.cutover;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.BranchFacts;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.branch.UtilityFacts;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.calendar.Notice;
import org.plumbrow.calc.outage.LearnedOutage;
import org.plumbrow.calc.outage.Slot;
import org.plumbrow.calc.outage.UtilityTerms;
import org.plumbrow.calc.outage.WindowQuestion;
import org.plumbrow.calc.outage.WindowQuestion.Earliest;
import org.plumbrow.calc.outage.WindowQuestion.Promise;
import org.plumbrow.project.ProjectFacts;
import org.springframework.stereotype.Component;

/** Puts together the question of which days the power can be off: utility, branch, crews, work before, customer, promise. */
@Component
class WindowFinder {

    /** Working days behind the first possible one are looked at for so many weeks. */
    private static final int WEEKS = 6;

    private final BranchSettings settings;
    private final CrewCalendar crews;
    private final Blackouts blackouts;
    private final OutageWorkRows works;
    private final OutageMinutesOfProject minutes;
    private final PlanBefore plan;
    private final FinishedOutages finished;
    private final Clock clock;

    WindowFinder(
            BranchSettings settings,
            CrewCalendar crews,
            Blackouts blackouts,
            OutageWorkRows works,
            OutageMinutesOfProject minutes,
            PlanBefore plan,
            FinishedOutages finished,
            Clock clock) {
        this.settings = settings;
        this.crews = crews;
        this.blackouts = blackouts;
        this.works = works;
        this.minutes = minutes;
        this.plan = plan;
        this.finished = finished;
        this.clock = clock;
    }

    /** @throws org.plumbrow.web.NotFound if the project's branch is not within reach */
    Asking asking(ProjectFacts project) {
        BranchFacts branch = settings.facts(project.branchId());
        WorkContent work = works.of(project.id());
        Optional<UtilityFacts> utility =
                Optional.ofNullable(project.site().utilityId()).flatMap(id -> settings.utility(project.branchId(), id));
        var expected = minutes.of(project, project.site().threePhase());
        LearnedOutage learned = finished.learned(
                project.branchId(), project.site().utilityId(), project.site().supplySideTap());
        int planned = work.plannedMinutes() == null ? expected.planned(learned) : work.plannedMinutes();
        LocalDate today = LocalDate.ofInstant(clock.instant(), branch.zone());
        List<Blackouts.Row> rows = blackouts.of(project.id());
        Earliest earliest = earliest(project, work, today);
        return new Asking(
                branch,
                utility,
                work,
                expected,
                learned,
                planned,
                today,
                earliest,
                rows,
                utility.map(known -> question(project, branch, known, planned, earliest, rows, today)));
    }

    private WindowQuestion question(
            ProjectFacts project,
            BranchFacts branch,
            UtilityFacts utility,
            int planned,
            Earliest earliest,
            List<Blackouts.Row> rows,
            LocalDate today) {
        LocalDate first = utility.notice().firstDayWhenSent(today);
        LocalDate through = (first.isBefore(earliest.day()) ? earliest.day() : first).plusWeeks(WEEKS);
        return new WindowQuestion(
                today,
                through,
                earliest,
                planned,
                terms(utility),
                branch.calendar(),
                crews.offers(branch.id(), project.id(), today, through),
                rows.stream().map(Blackouts.Row::rule).toList(),
                promise(project));
    }

    static UtilityTerms terms(UtilityFacts utility) {
        return new UtilityTerms(
                utility.name(),
                utility.notice(),
                utility.slots().stream()
                        .map(slot ->
                                new Slot(utility.appointmentWeekdays().days(), slot.from(), slot.to(), slot.backBy()))
                        .toList());
    }

    /** What the page says by hand goes before what the plan says. */
    private Earliest earliest(ProjectFacts project, WorkContent work, LocalDate today) {
        if (work.readyOn() != null) {
            String after = work.readyAfter().isBlank() ? "the work before the outage is not done" : work.readyAfter();
            return new Earliest(work.readyOn(), after + ".");
        }
        return plan.serviceSideDone(project.id()).orElse(new Earliest(today, ""));
    }

    private Optional<Promise> promise(ProjectFacts project) {
        return Optional.ofNullable(project.promise())
                .map(promise -> new Promise(
                        plan.latestCutover(project.id(), promise),
                        capital(promise.milestone().words()) + ", promised for " + DayWords.of(promise.date()) + ","));
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    /**
     * Everything that a page says about the choice.
     *
     * @param question empty as long as the site names no utility
     */
    record Asking(
            BranchFacts branch,
            Optional<UtilityFacts> utility,
            WorkContent work,
            org.plumbrow.calc.outage.OutageMinutes expected,
            LearnedOutage learned,
            int plannedMinutes,
            LocalDate today,
            Earliest earliest,
            List<Blackouts.Row> blackouts,
            Optional<WindowQuestion> question) {

        /** The same for an outage of so many minutes with that crew and no other; any crew where none is named. */
        Asking planning(int minutes, @Nullable UUID crewId) {
            Optional<WindowQuestion> ofCrew = question.map(any -> new WindowQuestion(
                    any.today(),
                    any.through(),
                    any.earliest(),
                    minutes,
                    any.utility(),
                    any.branch(),
                    any.crews().stream()
                            .filter(crew -> crewId == null || crew.id().equals(crewId.toString()))
                            .toList(),
                    any.blackouts(),
                    any.promise()));
            return new Asking(branch, utility, work, expected, learned, minutes, today, earliest, blackouts, ofCrew);
        }

        /** The same as it was asked on that day, if it has gone by; of a site that names no utility as of one without slots. */
        Asking asOf(LocalDate day) {
            LocalDate on = day.isBefore(today) ? day : today;
            WindowQuestion asked = question.orElseGet(() -> new WindowQuestion(
                    on,
                    day,
                    earliest,
                    plannedMinutes,
                    new UtilityTerms("The utility", new Notice(0, branch.calendar()), List.of()),
                    branch.calendar(),
                    List.of(),
                    blackouts.stream().map(Blackouts.Row::rule).toList(),
                    Optional.empty()));
            return new Asking(
                    branch,
                    utility,
                    work,
                    expected,
                    learned,
                    plannedMinutes,
                    on,
                    earliest,
                    blackouts,
                    Optional.of(asked.about(day, plannedMinutes)));
        }

        Optional<UUID> utilityId() {
            return utility.map(UtilityFacts::id);
        }
    }
}
