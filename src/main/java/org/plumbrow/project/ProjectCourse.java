package org.plumbrow.project;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * What is decided about a project as a whole: its name, promises, whether it is on hold or called off, and how much a
 * late day counts. Answers with the number of the journal line.
 */
@Service
@Transactional
public class ProjectCourse {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE, MMM d, yyyy", Locale.US);

    private final ProjectAccess projectAccess;
    private final Access access;
    private final ProjectParts parts;
    private final ProjectPromises promises;
    private final ProjectWas was;
    private final ProjectLines lines;
    private final Journal journal;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    ProjectCourse(
            ProjectAccess projectAccess,
            Access access,
            ProjectParts parts,
            ProjectPromises promises,
            ProjectWas was,
            ProjectLines lines,
            Journal journal,
            Clock clock,
            ApplicationEventPublisher events) {
        this.projectAccess = projectAccess;
        this.access = access;
        this.parts = parts;
        this.promises = promises;
        this.was = was;
        this.lines = lines;
        this.journal = journal;
        this.clock = clock;
        this.events = events;
    }

    /** The course as it stands, for its forms. */
    public record Course(
            long version,
            String name,
            Standing standing,
            @Nullable String reason,
            @Nullable String by,
            Instant since,
            @Nullable LocalDate until,
            int weight,
            @Nullable String weightReason) {}

    @Transactional(readOnly = true)
    public Course course(UUID projectId) {
        projectAccess.require(projectId, May.SEE_PROJECTS);
        Project p = parts.project(projectId);
        return new Course(
                p.version(),
                p.name(),
                p.standing(),
                p.standingReason(),
                p.standingBy(),
                p.standingSince(),
                p.standingUntil(),
                p.weight(),
                p.weightReason());
    }

    /** Newest first. */
    @Transactional(readOnly = true)
    public List<ProjectFacts.Promise> promises(UUID projectId) {
        projectAccess.require(projectId, May.SEE_PROJECTS);
        return promises.history(projectId);
    }

    /** Adds a promise; those before stay as they were. */
    public int promise(UUID projectId, NewProject.NewPromise made) {
        UUID branchId = projectAccess.require(projectId, May.EDIT_PROJECT);
        int number = promises.add(projectId, branchId, made, access.actor(), clock.instant());
        told(projectId, branchId);
        return number;
    }

    /** @throws EditedMeanwhile if somebody changed the course since */
    public int rename(UUID projectId, long openedVersion, String to) {
        Project project = opened(projectId, openedVersion, May.EDIT_PROJECT);
        Instant now = clock.instant();
        UUID kept = was.keepName(projectId, project.branchId(), project.rename(to), now);
        return written(project, "project.name", "Name changed.", Map.of("name.was", kept.toString()), now);
    }

    /** @throws EditedMeanwhile if somebody changed the course since */
    public int hold(UUID projectId, long openedVersion, String reason, @Nullable LocalDate until) {
        Project project = opened(projectId, openedVersion, May.EDIT_PROJECT);
        Standing from = project.standing();
        Instant now = clock.instant();
        project.hold(reason, until, access.actor().name(), now);
        String when = until == null ? "" : " until " + DAY.format(until);
        return stood(project, from, "On hold" + when + ". Reason: " + reason, now);
    }

    /** @throws EditedMeanwhile if somebody changed the course since */
    public int callOff(UUID projectId, long openedVersion, String reason) {
        Project project = opened(projectId, openedVersion, May.EDIT_PROJECT);
        Standing from = project.standing();
        Instant now = clock.instant();
        project.callOff(reason, access.actor().name(), now);
        return stood(project, from, "Called off. Reason: " + reason, now);
    }

    /** @throws EditedMeanwhile if somebody changed the course since */
    public int resume(UUID projectId, long openedVersion, String reason) {
        Project project = opened(projectId, openedVersion, May.EDIT_PROJECT);
        Standing from = project.standing();
        Instant now = clock.instant();
        project.resume(reason, access.actor().name(), now);
        return stood(project, from, "Resumed. Reason: " + reason, now);
    }

    /**
     * How much a late day counts, 1 to 5; more than 1 with a reason.
     *
     * @throws EditedMeanwhile if somebody changed the course since
     */
    public int weigh(UUID projectId, long openedVersion, int weight, String reason) {
        Project project = opened(projectId, openedVersion, May.CHANGE_PLAN);
        int from = project.weight();
        project.weigh(weight, reason);
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put("weight.from", Integer.toString(from));
        facts.put("weight.to", Integer.toString(weight));
        facts.put("reason", reason);
        String why = reason.isBlank() ? "" : " Reason: " + reason;
        return written(
                project,
                "project.weight",
                "A late day counts " + weight + " times, before: " + from + "." + why,
                facts,
                clock.instant());
    }

    private Project opened(UUID projectId, long openedVersion, May act) {
        projectAccess.require(projectId, act);
        Project project = parts.project(projectId);
        EditedMeanwhile.check(openedVersion, project.version());
        return project;
    }

    private int stood(Project project, Standing from, String sentence, Instant now) {
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put("standing.from", from.name());
        facts.put("standing.to", project.standing().name());
        return written(project, "project.standing", sentence, facts, now);
    }

    private int written(Project project, String kind, String sentence, Map<String, String> facts, Instant now) {
        int number = journal.append(JournalEvent.of(project.id(), kind, sentence, facts), access.actor(), now);
        told(project.id(), project.branchId());
        return number;
    }

    private void told(UUID projectId, UUID branchId) {
        parts.flush();
        lines.refresh(projectId);
        events.publishEvent(new ProjectChanged(projectId, branchId));
    }
}
