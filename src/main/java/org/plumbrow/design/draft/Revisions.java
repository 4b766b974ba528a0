package org.plumbrow.design.draft;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.calc.electrical.Verdict;
import org.plumbrow.database.Ids;
import org.plumbrow.design.check.DesignChecks;
import org.plumbrow.design.part.Part;
import org.plumbrow.project.Journal;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectChanged;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.project.Stage;
import org.plumbrow.project.gate.Gates;
import org.plumbrow.web.Access;
import org.plumbrow.web.Actor;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Refusal;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Freezes designs, says what differs between two, and keeps the list of documents that a change has made stale. */
@Service
@Transactional
public class Revisions {

    private final Designs designs;
    private final RevisionRows rows;
    private final StaleRows stale;
    private final ProjectAccess projectAccess;
    private final Projects projects;
    private final Journal journal;
    private final Gates gates;
    private final Access access;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    Revisions(
            Designs designs,
            RevisionRows rows,
            StaleRows stale,
            ProjectAccess projectAccess,
            Projects projects,
            Journal journal,
            Gates gates,
            Access access,
            ApplicationEventPublisher events,
            Clock clock) {
        this.designs = designs;
        this.rows = rows;
        this.stale = stale;
        this.projectAccess = projectAccess;
        this.projects = projects;
        this.journal = journal;
        this.gates = gates;
        this.access = access;
        this.events = events;
        this.clock = clock;
    }

    /** The newest first. */
    @Transactional(readOnly = true)
    List<Revision> of(UUID projectId) {
        projectAccess.require(projectId, May.SEE_DESIGN);
        return rows.of(projectId);
    }

    /** What is different, part by part, in words. */
    static List<String> differences(Revision from, org.plumbrow.design.part.DesignParts to) {
        List<String> all = new ArrayList<>();
        for (Part part : Part.values()) {
            if (!from.parts().of(part).equals(to.of(part))) {
                PartChanges.between(part, from.parts().of(part), to.of(part))
                        .forEach(change -> all.add(part.title() + ": " + change));
            }
        }
        return all;
    }

    /**
     * Freezes the draft as the next revision.
     *
     * @param seen version of the whole draft as the person saw it
     * @throws EditedMeanwhile if somebody has changed it since
     */
    public Optional<Refusal> freeze(UUID projectId, long seen, String why) {
        projectAccess.require(projectId, May.WRITE_DESIGN);
        Designs.Draft draft = designs.draft(projectId);
        if (!draft.isBegun() || draft.facts().modules() == 0) {
            return Optional.of(Refusal.ofForm("There is nothing to freeze yet: no array is drawn."));
        }
        if (draft.facts().version() != seen) {
            throw new EditedMeanwhile(seen, draft.facts().version());
        }
        return freeze(draft, why, access.actor(), clock.instant());
    }

    Optional<Refusal> freeze(Designs.Draft draft, String why, Actor by, Instant at) {
        UUID projectId = draft.project().id();
        Optional<Revision> before = rows.newest(projectId);
        if (before.isPresent() && before.get().parts().equals(draft.parts())) {
            return Optional.of(Refusal.ofForm(
                    "Nothing has changed since revision " + before.get().letter() + "."));
        }
        String letter = before.map(Revision::letter).map(Revisions::after).orElse("A");
        var frozen = new Revision(
                Ids.next(),
                letter,
                draft.facts().frozenAs(letter, draft.facts().sheet()),
                draft.parts(),
                why,
                at,
                by.name());
        rows.add(draft.project().branchId(), projectId, frozen);
        before.ifPresent(older -> becomeStale(draft.project(), older, frozen));
        journal.append(
                JournalEvent.of(
                        projectId,
                        "design.frozen",
                        "Design revision %s frozen: %s".formatted(letter, why.isEmpty() ? "first issue." : why),
                        facts(draft)),
                by,
                at);
        events.publishEvent(new ProjectChanged(projectId, draft.project().branchId()));
        gates.lookAgain(projectId);
        return Optional.empty();
    }

    private static Map<String, String> facts(Designs.Draft draft) {
        var groups = DesignChecks.of(draft.facts());
        return Map.of(
                "modules", Integer.toString(draft.facts().modules()),
                "kwDc", "%.2f".formatted(draft.facts().kwDc()),
                "kwAc", "%.2f".formatted(draft.facts().kwAc()),
                "failing", Long.toString(DesignChecks.count(groups, Verdict.FAIL)));
    }

    /** A, B … Z, AA, AB … */
    static String after(String letter) {
        char last = letter.charAt(letter.length() - 1);
        String head = letter.substring(0, letter.length() - 1);
        return last < 'Z' ? head + (char) (last + 1) : head.isEmpty() ? "AA" : after(head) + "A";
    }

    /** Only what has left the house for the permit can be stale. */
    private void becomeStale(ProjectFacts project, Revision older, Revision newer) {
        if (!Stage.PERMITTED.isReachedAt(project.stage())) {
            return;
        }
        stale.add(project.branchId(), project.id(), newer.id(), StaleDocuments.between(older.parts(), newer.parts()));
    }

    @Transactional(readOnly = true)
    List<StaleRows.Stale> stale(UUID projectId) {
        projectAccess.require(projectId, May.SEE_DESIGN);
        return stale.of(projectId);
    }

    /** @throws EditedMeanwhile if somebody was faster @throws NotFound */
    Optional<Refusal> close(UUID projectId, UUID id, long version, StaleRows.How how, String note) {
        projectAccess.require(projectId, May.WRITE_DESIGN);
        StaleRows.Stale one = stale.of(projectId).stream()
                .filter(row -> row.id().equals(id))
                .findFirst()
                .orElseThrow(NotFound::new);
        if (how == StaleRows.How.NOT_TOUCHED && note.isBlank()) {
            return Optional.of(new Refusal("note", "Say why the change does not touch this document."));
        }
        if (!stale.close(id, version, how, note, access.actor().name(), clock.instant())) {
            throw new EditedMeanwhile(version, one.version());
        }
        journal.append(
                JournalEvent.of(
                        projectId,
                        "design.document",
                        "%s: %s."
                                .formatted(
                                        one.document().title(),
                                        how == StaleRows.How.RENEWED ? "renewed" : "judged not touched")),
                access.actor(),
                clock.instant());
        return Optional.empty();
    }
}
