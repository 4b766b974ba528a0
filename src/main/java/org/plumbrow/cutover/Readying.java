package org.plumbrow.cutover;

import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.cutover.ReadyRows.Decision;
import org.plumbrow.cutover.ReadyRows.Go;
import org.plumbrow.cutover.ReadyRows.Said;
import org.plumbrow.cutover.ReadyRows.State;
import org.plumbrow.cutover.ridethrough.OnSite;
import org.plumbrow.cutover.ridethrough.SiteLoads;
import org.plumbrow.project.Journal;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectTitles;
import org.plumbrow.project.Projects;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The day before an outage: what is ready, and whether it goes. A person says go; the program only says what is missing. */
@Service
@Transactional
class Readying {

    private static final String NOT_ANNOUNCED =
            "No outage of this project is announced, so nothing was written. Agree one on the outage's page first.";

    private static final int LONGEST_NOTE = 200;
    private static final int LONGEST_NAME = 120;

    private final ProjectAccess projectAccess;
    private final Access access;
    private final Projects projects;
    private final ProjectTitles titles;
    private final Outages outages;
    private final SiteLoads loads;
    private final ReadyKnown known;
    private final ReadyRows rows;
    private final Journal journal;
    private final Clock clock;

    Readying(
            ProjectAccess projectAccess,
            Access access,
            Projects projects,
            ProjectTitles titles,
            Outages outages,
            SiteLoads loads,
            ReadyKnown known,
            ReadyRows rows,
            Journal journal,
            Clock clock) {
        this.projectAccess = projectAccess;
        this.access = access;
        this.projects = projects;
        this.titles = titles;
        this.outages = outages;
        this.loads = loads;
        this.known = known;
        this.rows = rows;
        this.journal = journal;
        this.clock = clock;
    }

    @Transactional(readOnly = true)
    public ReadySheet sheet(UUID projectId) {
        projectAccess.require(projectId, May.SEE_CUTOVERS);
        ProjectFacts project = projects.facts(projectId);
        OutageFacts window = announced(projectId).orElse(null);
        if (window == null) {
            return new ReadySheet(titles.of(project), project, null, List.of(), List.of(), null, false);
        }
        OnSite site = loads.ofUnchecked(projectId);
        return new ReadySheet(
                titles.of(project),
                project,
                window,
                known.of(project, window, site),
                items(window, site, project),
                rows.newest(window.id()).orElse(null),
                access.may(project.branchId(), May.RUN_CUTOVER));
    }

    private List<ReadySheet.Item> items(OutageFacts window, OnSite site, ProjectFacts project) {
        Map<ReadyItem, Said> said = rows.items(window.id());
        return Arrays.stream(ReadyItem.values())
                .filter(item -> item.isAskedAt(site, project))
                .map(item -> new ReadySheet.Item(item, said.getOrDefault(item, Said.NOTHING)))
                .toList();
    }

    private Optional<OutageFacts> announced(UUID projectId) {
        return outages.live(projectId).filter(window -> window.state().isAnnounced());
    }

    /** @param project for the way back; @param said with the version that the next writer opens */
    record ItemSheet(ProjectFacts project, ReadyItem item, Said said) {}

    @Transactional(readOnly = true)
    public ItemSheet item(UUID projectId, ReadyItem item) {
        projectAccess.require(projectId, May.RUN_CUTOVER);
        Said said = announced(projectId)
                .map(window -> rows.items(window.id()).getOrDefault(item, Said.NOTHING))
                .orElse(Said.NOTHING);
        return new ItemSheet(projects.facts(projectId), item, said);
    }

    /** @throws EditedMeanwhile if somebody said something since the page was opened */
    public Optional<Refusal> say(UUID projectId, ReadyItem item, @Nullable State state, String note, long version) {
        projectAccess.require(projectId, May.RUN_CUTOVER);
        OutageFacts window = announced(projectId).orElse(null);
        if (window == null) {
            return Optional.of(new Refusal("state", NOT_ANNOUNCED));
        }
        if (state == null) {
            return Optional.of(new Refusal("state", "Choose how it stands."));
        }
        if (note.length() > LONGEST_NOTE) {
            return Optional.of(new Refusal("note", "200 characters fit; " + note.length() + " are written."));
        }
        if (note.isEmpty() && (state == State.WRONG || state == State.NOT_HERE)) {
            return Optional.of(new Refusal("note", "Write why in a few words."));
        }
        String by = access.actor().name();
        if (!rows.say(window, item, new Said(state, note, by, clock.instant(), version))) {
            throw new EditedMeanwhile(version, -1);
        }
        journal(
                projectId,
                "outage.ready",
                "Before the outage: " + item.words() + ": " + state.words()
                        + (note.isEmpty() ? "." : ", " + note + "."));
        return Optional.empty();
    }

    /** Go only where nothing is red and nothing is missing; the other words always. */
    public Optional<Refusal> decide(UUID projectId, @Nullable Decision decision, String person, String reason) {
        projectAccess.require(projectId, May.RUN_CUTOVER);
        ReadySheet sheet = sheet(projectId);
        OutageFacts window = sheet.window();
        if (window == null) {
            return Optional.of(new Refusal("decision", NOT_ANNOUNCED));
        }
        Optional<Refusal> no = against(sheet, decision, person, reason);
        if (no.isPresent() || decision == null) {
            return no;
        }
        rows.decide(window, new Go(decision, person, reason, access.actor().name(), clock.instant()));
        journal(
                projectId,
                "outage.go",
                "Outage: " + decision.words() + ", says " + person + (reason.isEmpty() ? "." : ": " + reason + "."));
        return Optional.empty();
    }

    private static Optional<Refusal> against(
            ReadySheet sheet, @Nullable Decision decision, String person, String reason) {
        if (decision == null) {
            return Optional.of(new Refusal("decision", "Choose go, not yet or no-go."));
        }
        if (person.length() < 2 || person.length() > LONGEST_NAME) {
            return Optional.of(new Refusal("person", "Write the name of the person who says so, 2 to 120 characters."));
        }
        if (reason.length() > LONGEST_NOTE || reason.isEmpty() && decision != Decision.GO) {
            return Optional.of(new Refusal("reason", "Write why in one sentence, at most 200 characters."));
        }
        if (decision == Decision.GO && !sheet.red().isEmpty()) {
            return Optional.of(new Refusal("decision", "Red, so no go: " + String.join("; ", sheet.red()) + "."));
        }
        if (decision == Decision.GO && !sheet.notYet().isEmpty()) {
            return Optional.of(
                    new Refusal("decision", "Not ready yet, so no go: " + String.join("; ", sheet.notYet()) + "."));
        }
        return Optional.empty();
    }

    private void journal(UUID projectId, String kind, String sentence) {
        journal.append(JournalEvent.of(projectId, kind, sentence), access.actor(), clock.instant());
    }
}
