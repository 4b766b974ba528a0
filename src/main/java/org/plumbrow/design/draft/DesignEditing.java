package org.plumbrow.design.draft;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.design.draft.DesignRows.Kept;
import org.plumbrow.design.draft.DesignRows.Request;
import org.plumbrow.design.part.Cells;
import org.plumbrow.design.part.Part;
import org.plumbrow.project.Journal;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.gate.Gates;
import org.plumbrow.web.Access;
import org.plumbrow.web.Actor;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Begins a design and keeps its parts. */
@Service
@Transactional
public class DesignEditing {

    private static final int MOST_ROWS = 2_000;

    private final DesignRows rows;
    private final ProjectAccess projectAccess;
    private final Journal journal;
    private final Gates gates;
    private final Access access;
    private final Clock clock;

    DesignEditing(
            DesignRows rows, ProjectAccess projectAccess, Journal journal, Gates gates, Access access, Clock clock) {
        this.rows = rows;
        this.projectAccess = projectAccess;
        this.journal = journal;
        this.gates = gates;
        this.access = access;
        this.clock = clock;
    }

    /**
     * Asks for a design and fills in what survey and contract know already.
     *
     * @param known rows by part, kept where nobody has written that part
     */
    public void begin(UUID projectId, @Nullable LocalDate wantedOn, Map<Part, List<Cells>> known) {
        UUID branchId = projectAccess.require(projectId, May.WRITE_DESIGN);
        begin(
                new Request(projectId, branchId, clock.instant(), access.actor().name(), wantedOn),
                known,
                access.actor());
    }

    void begin(Request request, Map<Part, List<Cells>> known, Actor by) {
        if (!rows.ask(request)) {
            return;
        }
        known.forEach((part, written) -> rows.keep(request, part, -1, written, by.name(), request.at()));
        journal.append(JournalEvent.of(request.projectId(), "design.asked", "Design asked for."), by, request.at());
        gates.lookAgain(request.projectId());
    }

    /**
     * Keeps a part as it is written now.
     *
     * @param version as it was opened, -1 for a part that nobody had written
     * @throws EditedMeanwhile if somebody was faster
     */
    public Optional<Refusal> keep(UUID projectId, Part part, long version, List<Cells> written) {
        projectAccess.require(projectId, May.WRITE_DESIGN);
        Request design = rows.request(projectId).orElse(null);
        if (design == null) {
            return Optional.of(Refusal.ofForm("Nobody has asked for a design yet. Begin it first."));
        }
        return keep(design, part, version, written, access.actor());
    }

    Optional<Refusal> keep(Request design, Part part, long version, List<Cells> written, Actor by) {
        Optional<Refusal> no = refused(written);
        Kept before = rows.parts(design.projectId()).getOrDefault(part, Kept.NOTHING);
        if (before.version() != version) {
            throw new EditedMeanwhile(version, before.version());
        }
        if (no.isPresent() || before.rows().equals(written)) {
            return no;
        }
        if (!rows.keep(design, part, version, written, by.name(), clock.instant())) {
            throw new EditedMeanwhile(version, version + 1);
        }
        List<String> changes = PartChanges.between(part, before.rows(), written);
        journal.append(
                JournalEvent.of(
                        design.projectId(),
                        "design.changed",
                        "Design, %s: %s.".formatted(part.title().toLowerCase(java.util.Locale.ROOT), said(changes)),
                        Map.of("part", part.name(), "rows", Integer.toString(written.size()))),
                by,
                clock.instant());
        gates.lookAgain(design.projectId());
        return Optional.empty();
    }

    private static String said(List<String> changes) {
        int shown = Math.min(4, changes.size());
        String first = String.join("; ", changes.subList(0, shown));
        return changes.size() > shown ? first + "; and " + (changes.size() - shown) + " more" : first;
    }

    private static Optional<Refusal> refused(List<Cells> written) {
        if (written.size() > MOST_ROWS) {
            return Optional.of(Refusal.ofForm("At most " + MOST_ROWS + " rows fit here."));
        }
        Set<String> marks = new HashSet<>();
        List<String> twice = new ArrayList<>();
        for (int at = 0; at < written.size(); at++) {
            String mark = written.get(at).text("mark");
            if (!mark.isEmpty() && !marks.add(mark)) {
                twice.add(mark);
            }
        }
        return twice.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        Refusal.ofForm("The mark “" + twice.get(0) + "” stands twice. Each thing needs its own."));
    }
}
