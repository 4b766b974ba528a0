package org.plumbrow.cutover.ridethrough;

import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.cutover.ridethrough.HourForm.Hour;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectTitle;
import org.plumbrow.project.ProjectTitles;
import org.plumbrow.project.Projects;
import org.plumbrow.web.Access;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads what the pages about a site without power show. */
@Service
@Transactional(readOnly = true)
class WithoutPowerReading {

    private static final LocalTime NINE = LocalTime.of(9, 0);
    private static final int USUAL_MINUTES = 90;

    private final ProjectAccess projectAccess;
    private final Access access;
    private final Projects projects;
    private final ProjectTitles titles;
    private final SiteLoads loads;
    private final SiteWeathers weathers;
    private final JdbcClient jdbc;
    private final Clock clock;

    WithoutPowerReading(
            ProjectAccess projectAccess,
            Access access,
            Projects projects,
            ProjectTitles titles,
            SiteLoads loads,
            SiteWeathers weathers,
            JdbcClient jdbc,
            Clock clock) {
        this.projectAccess = projectAccess;
        this.access = access;
        this.projects = projects;
        this.titles = titles;
        this.loads = loads;
        this.weathers = weathers;
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** The booked window, else tomorrow at nine for an hour and a half. */
    Hour usualHour(UUID projectId) {
        UUID branchId = projectAccess.require(projectId, May.SEE_CUTOVERS);
        return jdbc.sql("""
                        select day, start_time, outage_minutes from outage_window
                         where project_id = ? and state in ('PROPOSED', 'BOOKED', 'NOTICE_GIVEN')
                        """)
                .param(projectId)
                .query((row, n) -> new Hour(
                        row.getObject("day", LocalDate.class),
                        row.getObject("start_time", LocalTime.class),
                        row.getInt("outage_minutes"),
                        null))
                .optional()
                .orElseGet(() -> new Hour(
                        LocalDate.ofInstant(clock.instant(), zone(branchId)).plusDays(1), NINE, USUAL_MINUTES, null));
    }

    WithoutPowerView at(UUID projectId, Hour hour) {
        projectAccess.require(projectId, May.SEE_CUTOVERS);
        ProjectFacts project = projects.facts(projectId);
        OnSite site = loads.ofUnchecked(projectId);
        boolean asks = site.kinds().keySet().stream()
                .anyMatch(kind ->
                        LoadCards.asksForWeather(kind) && !site.rows(kind).isEmpty());
        Optional<SiteWeather> weather =
                asks && hour.typed() == null ? weathers.of(projectId, zone(project.branchId())) : Optional.empty();
        HourOutside outside = hour.typed() != null
                ? hour.typed()
                : weather.map(known -> known.at(hour.day().atTime(hour.time()))).orElse(null);
        List<LoadCard> cards = LoadCards.of(site, outside, hour.minutes());
        GeneratorCard generator = LoadAnswers.generatorOf(site)
                .map(known -> GeneratorCard.of(known, hour.day(), hour.minutes(), cards))
                .orElse(null);
        return new WithoutPowerView(
                titles.of(project),
                project,
                hour,
                weather.map(SiteWeather::words).orElse(null),
                cards,
                generator,
                asks && outside == null,
                site,
                access.may(project.branchId(), May.BOOK_OUTAGE));
    }

    /** What one kind's page needs. */
    record Writing(ProjectTitle title, ProjectFacts project, OnSite.Kept kept) {}

    Writing writing(UUID projectId, LoadKind kind) {
        projectAccess.require(projectId, May.BOOK_OUTAGE);
        ProjectFacts project = projects.facts(projectId);
        return new Writing(
                titles.of(project), project, loads.ofUnchecked(projectId).kept(kind));
    }

    private ZoneId zone(UUID branchId) {
        return access.visitor().branch(branchId).orElseThrow(NotFound::new).zone();
    }
}
