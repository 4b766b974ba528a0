package org.plumbrow.schedule.crewweek;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.branch.PlanningSettings;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.duration.ActivityCode;
import org.plumbrow.crew.CrewFacts;
import org.plumbrow.evidence.EvidenceFacts;
import org.plumbrow.evidence.EvidenceStore;
import org.plumbrow.evidence.Keeping;
import org.plumbrow.evidence.Upload;
import org.plumbrow.project.Journal;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.project.WrittenDown;
import org.plumbrow.schedule.CrewBooking;
import org.plumbrow.schedule.PublishedPlan;
import org.plumbrow.schedule.activity.ActivityList;
import org.plumbrow.schedule.activity.ActivityRefresh;
import org.plumbrow.schedule.activity.JobActivities;
import org.plumbrow.schedule.crewweek.ReportSheet.Work;
import org.plumbrow.schedule.crewweek.ReportSheet.Written;
import org.plumbrow.web.Access;
import org.plumbrow.web.Actor;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * The daily report of a crew at a project: read, written, changed until the end of the next working day; what it says was done
 * is recorded of the activities.
 */
@Service
public class DailyReports {

    private static final Duration LONGEST_ON_A_PHONE = Duration.ofDays(14);

    private final CrewDoor door;
    private final ProjectAccess projectAccess;
    private final Projects projects;
    private final BranchSettings settings;
    private final ActivityList activities;
    private final ActivityRefresh refresh;
    private final PublishedPlan plan;
    private final ReportRows rows;
    private final ReportedProgress progress;
    private final EvidenceStore evidence;
    private final Journal journal;
    private final Access access;
    private final Clock clock;

    DailyReports(
            CrewDoor door,
            ProjectAccess projectAccess,
            Projects projects,
            BranchSettings settings,
            ActivityList activities,
            ActivityRefresh refresh,
            PublishedPlan plan,
            ReportRows rows,
            ReportedProgress progress,
            EvidenceStore evidence,
            Journal journal,
            Access access,
            Clock clock) {
        this.door = door;
        this.projectAccess = projectAccess;
        this.projects = projects;
        this.settings = settings;
        this.activities = activities;
        this.refresh = refresh;
        this.plan = plan;
        this.rows = rows;
        this.progress = progress;
        this.evidence = evidence;
        this.journal = journal;
        this.access = access;
        this.clock = clock;
    }

    @Transactional(readOnly = true)
    ReportSheet sheet(UUID crewId, UUID projectId, LocalDate day) {
        return sheet(crewId, projectId, day, clock.instant());
    }

    /**
     * @param at when the report was written: on a phone without signal that may have been in time
     * @throws NotFound for a day ahead, or a crew and a project of two branches
     */
    @Transactional(readOnly = true)
    ReportSheet sheet(UUID crewId, UUID projectId, LocalDate day, Instant at) {
        CrewFacts crew = door.open(crewId);
        UUID branchId = projectAccess.require(projectId, May.RECORD_PROGRESS);
        PlanningSettings with = settings.forPlanning(branchId);
        LocalDate today = LocalDate.ofInstant(clock.instant(), with.branch().zone());
        if (!crew.branchId().equals(branchId) || day.isAfter(today) || day.isBefore(today.minusYears(2))) {
            throw new NotFound();
        }
        ProjectFacts project = projects.factsUnchecked(projectId);
        LocalDate until = with.branch().workDays().onOrAfter(day.plusDays(1));
        Optional<Written> written = rows.find(of(crew, project, day));
        List<EvidenceFacts> photos = evidence.of(rows.photos(of(crew, project, day)));
        return new ReportSheet(
                crew,
                project,
                day,
                until,
                isOpen(until, at, with),
                written,
                works(crew, project, day, written, with),
                photos.stream().filter(photo -> !photo.hidden()).toList());
    }

    /** Written in time, though it may have waited on the phone for as long as that keeps its pages. */
    private boolean isOpen(LocalDate until, Instant at, PlanningSettings with) {
        return !LocalDate.ofInstant(at, with.branch().zone()).isAfter(until)
                && at.isAfter(clock.instant().minus(LONGEST_ON_A_PHONE));
    }

    private static ReportRows.Of of(ReportSheet sheet) {
        return of(sheet.crew(), sheet.project(), sheet.day());
    }

    private static ReportRows.Of of(CrewFacts crew, ProjectFacts project, LocalDate day) {
        return new ReportRows.Of(project.branchId(), project.id(), crew.id(), day);
    }

    /** Hours of a usual day on the site. */
    String usualHours(UUID branchId) {
        double hours = settings.facts(branchId).hours().minutesOnSite() / 60.0;
        return ReportRows.plain(java.math.BigDecimal.valueOf(hours)).toPlainString();
    }

    private List<Work> works(
            CrewFacts crew, ProjectFacts project, LocalDate day, Optional<Written> written, PlanningSettings with) {
        Set<UUID> booked = plan.ofCrew(crew.id(), HalfDay.morning(day), HalfDay.afternoon(day)).stream()
                .map(CrewBooking::activityId)
                .collect(Collectors.toSet());
        Map<UUID, ReportRows.Before> before = rows.others(of(crew, project, day));
        List<Work> works = new ArrayList<>();
        for (JobActivities.Item item :
                activities.read(List.of(project), with).get(0).items()) {
            UUID id = item.row().id();
            boolean own = written.flatMap(known -> known.report().line(id)).isPresent();
            if (own || mayBeReported(item, day)) {
                boolean likely = own || booked.contains(id) || item.row().isUnderWay();
                double done = before.containsKey(id) ? before.get(id).quantity() : 0;
                works.add(new Work(item, done, likely));
            }
        }
        return works;
    }

    /** The cutover has a log of its own, which records it. */
    private static boolean mayBeReported(JobActivities.Item item, LocalDate day) {
        return item.derived().kind() == ActivityCode.Kind.CREW
                && item.row().code() != ActivityCode.CUTOVER
                && item.row()
                        .recorded()
                        .finished()
                        .filter(finished -> finished.date().isBefore(day))
                        .isEmpty();
    }

    /** @return what is wrong with it @throws org.plumbrow.web.EditedMeanwhile */
    @Transactional
    Optional<Refusal> save(ReportSheet sheet, DailyReport report, List<Upload> photos) {
        Optional<Refusal> refused = photos.stream()
                .map(photo -> addPhoto(sheet, photo))
                .flatMap(Optional::stream)
                .findFirst();
        return refused.isPresent() ? refused : save(sheet, report, WrittenDown.now(clock.instant()));
    }

    /** @return what is wrong with it @throws org.plumbrow.web.EditedMeanwhile */
    @Transactional
    Optional<Refusal> save(ReportSheet sheet, DailyReport report, WrittenDown when) {
        Optional<Refusal> closed = closed(sheet);
        if (closed.isEmpty()) {
            write(sheet, report, access.actor(), when);
        }
        return closed;
    }

    /** A photo of the day, whether or not its report is written yet. @return what is wrong with it */
    @Transactional
    Optional<Refusal> addPhoto(ReportSheet sheet, Upload photo) {
        Optional<Refusal> closed = closed(sheet);
        if (closed.isPresent()) {
            return closed;
        }
        Keeping keeping = evidence.keep(sheet.crew().branchId(), sheet.project().id(), photo, access.actor());
        if (keeping instanceof Keeping.Refused refused) {
            return Optional.of(Refusal.ofForm(photo.name() + ": " + refused.sentence()));
        }
        rows.addPhoto(of(sheet), ((Keeping.Kept) keeping).evidence().id());
        return Optional.empty();
    }

    private Optional<Refusal> closed(ReportSheet sheet) {
        projectAccess.require(sheet.project().id(), May.RECORD_PROGRESS);
        return sheet.open()
                ? Optional.empty()
                : Optional.of(Refusal.ofForm("This report could be changed until %s. Tell the project manager instead."
                        .formatted(DayWords.of(sheet.until()))));
    }

    /** For the demo, whose manager keeps what the lead said; at any day. */
    @Transactional
    public void reportUnchecked(UUID crewId, UUID projectId, LocalDate day, SaidOfTheDay said, Actor by) {
        refresh.project(projectId);
        ReportSheet sheet = sheet(crewId, projectId, day);
        write(sheet, said.report(sheet), by, WrittenDown.now(clock.instant()));
    }

    private void write(ReportSheet sheet, DailyReport report, Actor by, WrittenDown when) {
        ReportRows.Of of = of(sheet);
        rows.write(of, sheet.written(), report, by, when);
        JournalEvent line = JournalEvent.of(sheet.project().id(), "report.daily", ReportWords.sentence(sheet, report));
        journal.append(line, by, when.received());
        progress.take(sheet, report, rows.others(of), by);
    }
}
