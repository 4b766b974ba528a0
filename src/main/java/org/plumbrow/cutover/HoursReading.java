package org.plumbrow.cutover;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.outage.ranking.HourQuestion;
import org.plumbrow.calc.outage.ranking.HourRanking;
import org.plumbrow.calc.outage.ranking.HourWindow;
import org.plumbrow.cutover.HoursView.Hour;
import org.plumbrow.cutover.ridethrough.OnSite;
import org.plumbrow.cutover.ridethrough.SiteLoads;
import org.plumbrow.cutover.ridethrough.SiteWeather;
import org.plumbrow.cutover.ridethrough.SiteWeathers;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectTitle;
import org.plumbrow.project.ProjectTitles;
import org.plumbrow.project.Projects;
import org.plumbrow.web.Access;
import org.plumbrow.web.May;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Ranks the hours of the next weeks for one project. */
@Service
@Transactional(readOnly = true)
class HoursReading {

    private final ProjectAccess projectAccess;
    private final Access access;
    private final Projects projects;
    private final ProjectTitles titles;
    private final WindowFinder finder;
    private final HourQuestions questions;
    private final SiteLoads loads;
    private final SiteWeathers weathers;

    HoursReading(
            ProjectAccess projectAccess,
            Access access,
            Projects projects,
            ProjectTitles titles,
            WindowFinder finder,
            HourQuestions questions,
            SiteLoads loads,
            SiteWeathers weathers) {
        this.projectAccess = projectAccess;
        this.access = access;
        this.projects = projects;
        this.titles = titles;
        this.finder = finder;
        this.questions = questions;
        this.loads = loads;
        this.weathers = weathers;
    }

    /** @param opened an hour that somebody asks about; null for none */
    HoursView ranked(UUID projectId, @Nullable LocalDateTime opened) {
        projectAccess.require(projectId, May.SEE_CUTOVERS);
        ProjectFacts project = projects.facts(projectId);
        WindowFinder.Asking asking = finder.asking(project);
        OnSite site = loads.ofUnchecked(projectId);
        boolean given = site.saysWhatSuffers() || project.site().loads().isEmpty();
        boolean mayBook = access.may(project.branchId(), May.BOOK_OUTAGE);
        ProjectTitle title = titles.of(project);
        if (asking.question().isEmpty()) {
            return new HoursView(
                    title, project, List.of(), List.of(), null, 0, given, asking.plannedMinutes(), null, mayBook);
        }
        Optional<SiteWeather> weather = weathers.of(projectId, asking.branch().zone());
        HourQuestion question = questions.of(
                project,
                asking,
                asking.question().get(),
                site,
                weather,
                asking.today().plusDays(1).atTime(HourQuestions.FIRST_START));
        HourRanking ranking = once(HourRanking.of(question), asking);
        return new HoursView(
                title,
                project,
                HoursView.days(ranking, given),
                ranking.relaxations(),
                opened == null ? null : opened(question, opened, given),
                ranking.hoursLookedAt(),
                given,
                asking.plannedMinutes(),
                weather.map(SiteWeather::words).orElse(null),
                mayBook);
    }

    /** Without the hours of a night in which the clocks change. */
    private static HourRanking once(HourRanking ranking, WindowFinder.Asking asking) {
        ZoneId zone = asking.branch().zone();
        List<HourWindow> windows = ranking.windows().stream()
                .filter(window -> !WindowRules.isSkippedOrDoubled(
                        window.start().toLocalDate(), window.start().toLocalTime(), asking.plannedMinutes(), zone))
                .toList();
        return new HourRanking(windows, ranking.hoursLookedAt(), ranking.relaxations());
    }

    private static @Nullable Hour opened(HourQuestion question, LocalDateTime start, boolean given) {
        return start.isBefore(question.from()) || start.isAfter(question.through())
                ? null
                : new Hour(HourRanking.opened(question, start), given);
    }
}
