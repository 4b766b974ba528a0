package org.plumbrow.project;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.account.BranchPeople;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.branch.Written;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Corrects site, contract and people of a project: each under its own version, each with a journal line that says from
 * what to what. Answers with the number of that line; empty when nothing was different.
 */
@Service
@Transactional
public class ProjectEditing {

    private final ProjectAccess projectAccess;
    private final Access access;
    private final ProjectParts parts;
    private final ProjectWas was;
    private final ProjectLines lines;
    private final Journal journal;
    private final BranchSettings settings;
    private final BranchPeople people;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    ProjectEditing(
            ProjectAccess projectAccess,
            Access access,
            ProjectParts parts,
            ProjectWas was,
            ProjectLines lines,
            Journal journal,
            BranchSettings settings,
            BranchPeople people,
            Clock clock,
            ApplicationEventPublisher events) {
        this.projectAccess = projectAccess;
        this.access = access;
        this.parts = parts;
        this.was = was;
        this.lines = lines;
        this.journal = journal;
        this.settings = settings;
        this.people = people;
        this.clock = clock;
        this.events = events;
    }

    /** A part as it stands, for its form. */
    public record Part<T>(T facts, long version) {}

    @Transactional(readOnly = true)
    public Part<ProjectFacts.Site> site(UUID projectId) {
        projectAccess.require(projectId, May.EDIT_PROJECT);
        ProjectSite site = parts.site(projectId);
        return new Part<>(site.facts(), site.version());
    }

    @Transactional(readOnly = true)
    public Part<ProjectFacts.Contract> contract(UUID projectId) {
        projectAccess.require(projectId, May.EDIT_PROJECT);
        ProjectContract contract = parts.contract(projectId);
        return new Part<>(contract.facts(), contract.version());
    }

    @Transactional(readOnly = true)
    public Part<Map<Duty, ProjectFacts.InCharge>> people(UUID projectId) {
        projectAccess.require(projectId, May.EDIT_PROJECT);
        ProjectPeople people = parts.people(projectId);
        return new Part<>(people.facts(), people.version());
    }

    /**
     * @throws EditedMeanwhile if somebody saved the site since
     * @throws IllegalArgumentException for a utility or permit office of another branch: the form offers none
     */
    public Optional<Integer> correctSite(UUID projectId, long openedVersion, ProjectFacts.Site to) {
        UUID branchId = projectAccess.require(projectId, May.EDIT_PROJECT);
        Instant now = clock.instant();
        ProjectSite site = parts.site(projectId);
        EditedMeanwhile.check(openedVersion, site.version());
        List<Written> after = fields(branchId, to);
        ProjectFacts.Site from = site.correct(to);
        PartChange change = PartChange.between("Site", fields(branchId, from), after);
        if (!samePlace(from, to)) {
            UUID kept = was.keepPlace(projectId, branchId, from, now);
            change.facts().put("place.was", kept.toString());
        }
        return written(projectId, branchId, change, "project.site", now);
    }

    /** @throws EditedMeanwhile if somebody saved the contract since */
    public Optional<Integer> correctContract(UUID projectId, long openedVersion, ProjectFacts.Contract to) {
        UUID branchId = projectAccess.require(projectId, May.EDIT_PROJECT);
        ProjectContract contract = parts.contract(projectId);
        EditedMeanwhile.check(openedVersion, contract.version());
        ProjectFacts.Contract from = contract.correct(to);
        PartChange change = PartChange.between("Contract", PartFields.contract(from), PartFields.contract(to));
        return written(projectId, branchId, change, "project.contract", clock.instant());
    }

    /**
     * @throws EditedMeanwhile if somebody saved the people since
     * @throws IllegalArgumentException for a person of another branch: the form offers none
     */
    public Optional<Integer> assign(UUID projectId, long openedVersion, Map<Duty, ProjectFacts.InCharge> to) {
        UUID branchId = projectAccess.require(projectId, May.EDIT_PROJECT);
        ProjectPeople inCharge = parts.people(projectId);
        EditedMeanwhile.check(openedVersion, inCharge.version());
        Map<Duty, ProjectFacts.InCharge> from = inCharge.facts();
        belongTo(branchId, from, to);
        inCharge.assign(to);
        PartChange change = PartChange.between("People", PartFields.people(from), PartFields.people(to));
        return written(projectId, branchId, change, "project.people", clock.instant());
    }

    private Optional<Integer> written(UUID projectId, UUID branchId, PartChange change, String kind, Instant now) {
        if (change.isNothing()) {
            return Optional.empty();
        }
        int number = journal.append(change.event(projectId, kind), access.actor(), now);
        parts.flush();
        lines.refresh(projectId);
        events.publishEvent(new ProjectChanged(projectId, branchId));
        return Optional.of(number);
    }

    private List<Written> fields(UUID branchId, ProjectFacts.Site site) {
        return PartFields.site(
                site,
                id -> settings.utility(branchId, id)
                        .map(utility -> utility.name())
                        .or(() -> settings.permitOffice(branchId, id).map(office -> office.name()))
                        .orElseThrow(
                                () -> new IllegalArgumentException("no utility or permit office " + id + " here")));
    }

    private static boolean samePlace(ProjectFacts.Site from, ProjectFacts.Site to) {
        return ProjectWas.placeOf(from).equals(ProjectWas.placeOf(to));
    }

    private void belongTo(UUID branchId, Map<Duty, ProjectFacts.InCharge> from, Map<Duty, ProjectFacts.InCharge> to) {
        to.forEach((duty, who) -> {
            if (who.personId() != null
                    && !who.equals(from.get(duty))
                    && people.find(branchId, who.personId()).isEmpty()) {
                throw new IllegalArgumentException(who.personId() + " is nobody of this branch");
            }
        });
    }
}
