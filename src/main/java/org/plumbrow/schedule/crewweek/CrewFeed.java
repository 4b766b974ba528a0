package org.plumbrow.schedule.crewweek;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.plumbrow.branch.BranchFacts;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.crew.CrewFacts;
import org.plumbrow.crew.Crews;
import org.plumbrow.notice.CalendarFile;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.schedule.CrewBooking;
import org.plumbrow.schedule.PublishedPlan;
import org.plumbrow.web.LinkEnded;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * A crew's calendar for whoever holds its private link: the place, the work, the project's number; no name of a customer
 * or a project, as a farm's name is often its owner's.
 */
@Service
@Transactional(readOnly = true)
class CrewFeed {

    private static final int WEEKS_BACK = 2;
    private static final int WEEKS_AHEAD = 26;

    private final BranchSettings settings;
    private final Crews crews;
    private final PublishedPlan plan;
    private final Projects projects;
    private final Clock clock;

    CrewFeed(BranchSettings settings, Crews crews, PublishedPlan plan, Projects projects, Clock clock) {
        this.settings = settings;
        this.crews = crews;
        this.plan = plan;
        this.projects = projects;
        this.clock = clock;
    }

    byte[] of(UUID crewId) {
        CrewFacts crew = crews.crew(crewId).orElseThrow(LinkEnded::new);
        BranchFacts branch = settings.facts(crew.branchId());
        LocalDate today = LocalDate.ofInstant(clock.instant(), branch.zone());
        List<CrewBooking> bookings = plan.ofCrew(
                crewId, HalfDay.morning(today.minusWeeks(WEEKS_BACK)), HalfDay.afternoon(today.plusWeeks(WEEKS_AHEAD)));
        Map<UUID, ProjectFacts> facts =
                projects
                        .factsUnchecked(bookings.stream()
                                .map(CrewBooking::projectId)
                                .distinct()
                                .toList())
                        .stream()
                        .collect(Collectors.toMap(ProjectFacts::id, Function.identity()));
        Instant published = plan.publishedAt(crew.branchId()).orElse(clock.instant());
        int number = plan.number(crew.branchId());
        List<CalendarFile.Entry> entries = new ArrayList<>();
        for (WorkDay day : WorkDay.of(bookings, branch, crew)) {
            entries.add(entry(day, facts.get(day.booking().projectId()), branch, number, published));
        }
        return CalendarFile.of(crew.name() + ", " + branch.name(), entries);
    }

    private static CalendarFile.Entry entry(
            WorkDay day, ProjectFacts project, BranchFacts branch, int number, Instant published) {
        String name = day.booking().activityId() + "/" + day.ordinal();
        String work = day.booking().words();
        return new CalendarFile.Entry(
                UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8)),
                number,
                published,
                at(day, branch, true),
                at(day, branch, false),
                "%s%s, %s".formatted(Character.toUpperCase(work.charAt(0)), work.substring(1), project.number()),
                project.site().address(),
                "",
                false);
    }

    private static Instant at(WorkDay day, BranchFacts branch, boolean begins) {
        return day.date()
                .atTime(begins ? day.begins(branch.hours()) : day.ends(branch.hours()))
                .atZone(branch.zone())
                .toInstant();
    }
}
