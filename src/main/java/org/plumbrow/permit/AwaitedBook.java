package org.plumbrow.permit;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.branch.PermitOfficeFacts;
import org.plumbrow.branch.UtilityFacts;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.database.ReadOnce;
import org.plumbrow.evidence.EvidenceFacts;
import org.plumbrow.evidence.EvidenceStore;
import org.plumbrow.project.Journal;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.project.gate.GateLook;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Refusal;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What projects wait for, and each change of it with its journal line. */
@Service
@Transactional
public class AwaitedBook {

    private final AwaitedRows rows;
    private final ReminderRows reminders;
    private final Projects projects;
    private final ProjectAccess projectAccess;
    private final EvidenceStore evidence;
    private final BranchSettings settings;
    private final Journal journal;
    private final Access access;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    AwaitedBook(
            AwaitedRows rows,
            ReminderRows reminders,
            Projects projects,
            ProjectAccess projectAccess,
            EvidenceStore evidence,
            BranchSettings settings,
            Journal journal,
            Access access,
            ApplicationEventPublisher events,
            Clock clock) {
        this.rows = rows;
        this.reminders = reminders;
        this.projects = projects;
        this.projectAccess = projectAccess;
        this.evidence = evidence;
        this.settings = settings;
        this.journal = journal;
        this.access = access;
        this.events = events;
        this.clock = clock;
    }

    /** Read once a look, whichever room's rule asks first; nobody is asked for: whoever looks has been let in. */
    @Transactional(readOnly = true)
    public List<Awaited> at(GateLook look) {
        return look.once(OfLook.class, project -> new OfLook(ofProject(project.id())))
                .waits();
    }

    /** All of a project, once a page; callers have asked who may. */
    @Transactional(readOnly = true)
    public List<Awaited> ofProject(UUID projectId) {
        return ReadOnce.of(new OfProject(projectId), () -> rows.ofProject(projectId));
    }

    private record OfProject(UUID id) {}

    private record OfLook(List<Awaited> waits) {}

    /** @throws NotFound if it is not one of this project */
    @Transactional(readOnly = true)
    public Awaited one(UUID projectId, UUID id) {
        projectAccess.require(projectId, May.EDIT_PROJECT);
        return rows.find(projectId, id).orElseThrow(NotFound::new);
    }

    /** The reminders of one wait, the last first. */
    @Transactional(readOnly = true)
    List<ReminderRows.Told> remindersOf(UUID awaitedId) {
        return reminders.of(awaitedId);
    }

    /** The project's papers that a wait may name. */
    @Transactional(readOnly = true)
    List<EvidenceFacts> papers(UUID projectId) {
        return evidence.ofProject(projectId).stream()
                .filter(paper -> paper.hasFile() && !paper.hidden())
                .toList();
    }

    /** @return what is wrong with it */
    public Optional<Refusal> add(Awaited typed) {
        UUID branchId = projectAccess.require(typed.projectId(), May.EDIT_PROJECT);
        ProjectFacts project = projects.facts(typed.projectId());
        Optional<Refusal> refusal = refusal(typed, project);
        if (refusal.isEmpty()) {
            Awaited one = completed(typed, project);
            rows.add(branchId, one);
            tell(one, null);
        }
        return refusal;
    }

    /**
     * @return what is wrong with it
     * @throws EditedMeanwhile if somebody was faster
     */
    public Optional<Refusal> change(Awaited typed) {
        projectAccess.require(typed.projectId(), May.EDIT_PROJECT);
        Awaited before = rows.find(typed.projectId(), typed.id()).orElseThrow(NotFound::new);
        EditedMeanwhile.check(typed.version(), before.version());
        ProjectFacts project = projects.facts(typed.projectId());
        Optional<Refusal> refusal = refusal(typed, project);
        if (refusal.isPresent()) {
            return refusal;
        }
        Awaited one = completed(typed, project);
        if (!one.equals(before)) {
            if (!rows.change(one)) {
                throw new EditedMeanwhile(typed.version(), before.version() + 1);
            }
            tell(one, before);
        }
        return Optional.empty();
    }

    private Optional<Refusal> refusal(Awaited typed, ProjectFacts project) {
        LocalDate today = today(project.branchId());
        Optional<Refusal> said = AwaitedRefusals.of(typed, project, today);
        UUID paper = typed.paperId();
        if (said.isEmpty()
                && paper != null
                && papers(project.id()).stream().noneMatch(one -> one.id().equals(paper))) {
            return Optional.of(new Refusal("paperId", "Choose one of the project’s papers."));
        }
        return said;
    }

    LocalDate today(UUID branchId) {
        return LocalDate.ofInstant(clock.instant(), settings.facts(branchId).zone());
    }

    /** With the site's utility or office, and the row of the table. */
    private Awaited completed(Awaited typed, ProjectFacts project) {
        UUID utility = typed.owedBy() == OwedBy.UTILITY ? project.site().utilityId() : null;
        UUID office = typed.owedBy() == OwedBy.PERMIT_OFFICE ? project.site().permitOfficeId() : null;
        return new Awaited(
                typed.id(),
                typed.version(),
                typed.projectId(),
                typed.kind(),
                typed.kind().waitCode(project),
                typed.about(),
                typed.owedBy(),
                utility,
                office,
                name(typed, utility, office),
                typed.sentOn(),
                typed.promisedOn(),
                typed.dueOn(),
                typed.expiresOn(),
                typed.receivedOn(),
                typed.result(),
                typed.paperId(),
                typed.note());
    }

    private String name(Awaited typed, @Nullable UUID utility, @Nullable UUID office) {
        if (utility != null) {
            return settings.utility(utility).map(UtilityFacts::name).orElse("");
        }
        if (office != null) {
            return settings.permitOffice(office).map(PermitOfficeFacts::name).orElse("");
        }
        // A customer's name stands with the customer only.
        return typed.owedBy() == OwedBy.CUSTOMER || typed.owedBy() == OwedBy.US ? "" : typed.owedName();
    }

    private void tell(Awaited one, @Nullable Awaited before) {
        journal.append(
                JournalEvent.of(
                        one.projectId(),
                        before == null ? "wait.added" : "wait.changed",
                        one.what() + ": " + stands(one) + ".",
                        Map.of("wait", one.id().toString(), "kind", one.kind().name())),
                access.actor(),
                clock.instant());
        tellThePlan(one, before);
    }

    /** Also what it was before, where its kind has changed. */
    private void tellThePlan(Awaited one, @Nullable Awaited before) {
        List<Awaited> all = rows.ofProject(one.projectId());
        Stream.of(Optional.of(one), Optional.ofNullable(before))
                .flatMap(Optional::stream)
                .flatMap(each -> each.kind().activity().stream())
                .distinct()
                .flatMap(code -> WaitMoved.of(one.projectId(), code, all, access.actor()).stream())
                .forEach(events::publishEvent);
    }

    private static String stands(Awaited one) {
        if (one.receivedOn() != null) {
            String result = one.result() == null ? "" : ", " + one.result().words();
            String expires = one.expiresOn() == null ? "" : ", counts until " + DayWords.withYear(one.expiresOn());
            return "came " + DayWords.withYear(one.receivedOn()) + result + expires;
        }
        String sent = one.sentOn() == null ? "not asked for yet" : "asked for " + DayWords.withYear(one.sentOn());
        String promised = one.promisedOn() == null ? "" : ", promised for " + DayWords.withYear(one.promisedOn());
        String due = one.dueOn() == null ? "" : ", needed by " + DayWords.withYear(one.dueOn());
        return sent + promised + due;
    }
}
