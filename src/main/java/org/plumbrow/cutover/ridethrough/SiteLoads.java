package org.plumbrow.cutover.ridethrough;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.design.part.Cells;
import org.plumbrow.project.Journal;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectChanged;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.plumbrow.web.Refusal;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What on a site suffers without power: reading it and writing it down. */
@Service
@Transactional
public class SiteLoads {

    private final SiteLoadRows rows;
    private final ProjectAccess projectAccess;
    private final Access access;
    private final Journal journal;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    SiteLoads(
            SiteLoadRows rows,
            ProjectAccess projectAccess,
            Access access,
            Journal journal,
            ApplicationEventPublisher events,
            Clock clock) {
        this.rows = rows;
        this.projectAccess = projectAccess;
        this.access = access;
        this.journal = journal;
        this.events = events;
        this.clock = clock;
    }

    @Transactional(readOnly = true)
    public OnSite of(UUID projectId) {
        projectAccess.require(projectId, May.SEE_CUTOVERS);
        return rows.of(projectId);
    }

    /** For whoever has looked at the project already. */
    @Transactional(readOnly = true)
    public OnSite ofUnchecked(UUID projectId) {
        return rows.of(projectId);
    }

    /**
     * @param version as the form was opened, -1 for a kind that nobody had written
     * @return what no balance can be made of, at its row
     * @throws EditedMeanwhile if somebody saved it since
     */
    public Optional<Refusal> keep(UUID projectId, LoadKind kind, long version, List<Cells> written) {
        UUID branchId = projectAccess.require(projectId, May.BOOK_OUTAGE);
        Optional<Refusal> no = LoadCheck.refusal(kind, written);
        if (no.isPresent()) {
            return no;
        }
        if (!rows.keep(
                projectId, branchId, kind, version, written, access.actor().name(), clock.instant())) {
            throw new EditedMeanwhile(version, rows.of(projectId).kept(kind).version());
        }
        String sentence = "Without power: “" + kind.title() + "” was written down, "
                + (written.size() == 1 ? "one entry." : written.size() + " entries.");
        journal.append(
                JournalEvent.of(projectId, "outage.loads", sentence, Map.of("kind", kind.slug())),
                access.actor(),
                clock.instant());
        events.publishEvent(new ProjectChanged(projectId, branchId));
        return Optional.empty();
    }
}
