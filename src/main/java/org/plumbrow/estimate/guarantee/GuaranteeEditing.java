package org.plumbrow.estimate.guarantee;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Written;
import org.plumbrow.project.Journal;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectEditing;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.gate.Gates;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Writes the terms of a guarantee, and the chosen promise into the contract through the project's own service. */
@Service
@Transactional
public class GuaranteeEditing {

    private final GuaranteeRows rows;
    private final ProjectAccess projectAccess;
    private final ProjectEditing contracts;
    private final Journal journal;
    private final Gates gates;
    private final Access access;
    private final Clock clock;

    GuaranteeEditing(
            GuaranteeRows rows,
            ProjectAccess projectAccess,
            ProjectEditing contracts,
            Journal journal,
            Gates gates,
            Access access,
            Clock clock) {
        this.rows = rows;
        this.projectAccess = projectAccess;
        this.contracts = contracts;
        this.journal = journal;
        this.gates = gates;
        this.access = access;
        this.clock = clock;
    }

    /**
     * @param version as it was opened; -1 for a project whose terms nobody has written
     * @throws EditedMeanwhile if somebody was faster
     */
    public void change(UUID projectId, long version, PromiseTerms terms) {
        UUID branchId = projectAccess.require(projectId, May.EDIT_PROJECT);
        Optional<GuaranteeRows.Kept> before = rows.of(projectId);
        long stored = before.map(GuaranteeRows.Kept::version).orElse(-1L);
        EditedMeanwhile.check(version, stored);
        PromiseTerms was = before.map(GuaranteeRows.Kept::terms).orElse(null);
        if (terms.equals(was)) {
            return;
        }
        if (!rows.keep(projectId, branchId, version, terms)) {
            throw new EditedMeanwhile(
                    version, rows.of(projectId).map(GuaranteeRows.Kept::version).orElse(-1L));
        }
        journal.append(line(projectId, was, terms), access.actor(), clock.instant());
        gates.lookAgain(projectId);
    }

    /** The rate stands in the facts only: the sentence is read by people who may not see money. */
    private static JournalEvent line(UUID projectId, @Nullable PromiseTerms was, PromiseTerms terms) {
        List<Written> after = terms.written();
        List<Written> before = was == null ? List.of() : was.written();
        Map<String, String> facts = new TreeMap<>();
        List<String> changed = new ArrayList<>();
        for (int at = 0; at < after.size(); at++) {
            Written now = after.get(at);
            String from = before.isEmpty() ? "" : before.get(at).words();
            if (!from.equals(now.words())) {
                facts.put(now.name() + ".from", from);
                facts.put(now.name() + ".to", now.words());
                changed.add(now.label().toLowerCase(java.util.Locale.ROOT));
            }
        }
        String sentence = was == null
                ? "Terms of the production guarantee written: %d years, settled %s."
                        .formatted(terms.years(), terms.settledWords())
                : "Terms of the production guarantee changed: " + String.join("; ", changed) + ".";
        return JournalEvent.of(projectId, "guarantee.terms", sentence, facts);
    }

    /**
     * Writes what is promised for the first year into the contract.
     *
     * @param contractVersion as it was opened
     * @return the journal line; empty when the contract said so already
     * @throws EditedMeanwhile if somebody saved the contract since
     */
    public Optional<Integer> promise(UUID projectId, long contractVersion, int kwh) {
        ProjectFacts.Contract is = contracts.contract(projectId).facts();
        return contracts.correctContract(projectId, contractVersion, is.withGuaranteedKwh(kwh));
    }
}
