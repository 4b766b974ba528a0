package org.plumbrow.project;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.database.Ids;
import org.plumbrow.web.Access;
import org.plumbrow.web.Actor;
import org.plumbrow.web.May;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** How a project begins: with the branch's next number, its parts and the first line of its journal. */
@Service
@Transactional
public class ProjectRegister {

    private final Access access;
    private final ProjectParts parts;
    private final ProjectPromises promises;
    private final CustomerRows customers;
    private final ProjectLines lines;
    private final Journal journal;
    private final JdbcClient jdbc;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    ProjectRegister(
            Access access,
            ProjectParts parts,
            ProjectPromises promises,
            CustomerRows customers,
            ProjectLines lines,
            Journal journal,
            JdbcClient jdbc,
            Clock clock,
            ApplicationEventPublisher events) {
        this.access = access;
        this.parts = parts;
        this.promises = promises;
        this.customers = customers;
        this.lines = lines;
        this.journal = journal;
        this.jdbc = jdbc;
        this.clock = clock;
        this.events = events;
    }

    /**
     * Opens a project as the person who asks.
     *
     * @return its id
     * @throws org.plumbrow.web.NotForYourRole if the role may not
     */
    public UUID open(UUID branchId, NewProject begun) {
        access.require(branchId, May.EDIT_PROJECT);
        return openUnchecked(branchId, begun, access.actor());
    }

    /** As {@link #open} for work in the background (the import, the demo): the caller has asked for access. */
    public UUID openUnchecked(UUID branchId, NewProject begun, Actor by) {
        Instant now = clock.instant();
        UUID id = Ids.next();
        ProjectNumber number = nextNumber(branchId, now);
        parts.add(new Project(id, branchId, number, begun.name(), begun.reference(), by.name(), now));
        parts.add(
                new ProjectSite(id, branchId, begun.site()),
                new ProjectContract(id, branchId, begun.contract()),
                new ProjectPeople(id, branchId, begun.people()),
                new ProjectCustomer(id, branchId));
        customers.begin(id, branchId, begun, now);
        journal.begin(id, branchId);
        journal.append(JournalEvent.of(id, "project.opened", "Project " + number.written() + " opened."), by, now);
        if (begun.promise() != null) {
            promises.add(id, branchId, begun.promise(), by, now);
        }
        lines.refresh(id);
        events.publishEvent(new ProjectChanged(id, branchId));
        return id;
    }

    /** The project that came in under this reference, if there is one. */
    @Transactional(readOnly = true)
    public Optional<UUID> withReference(UUID branchId, String reference) {
        access.require(branchId, May.SEE_PROJECTS);
        return jdbc.sql("select id from project where branch_id = ? and reference = ?")
                .params(branchId, reference)
                .query(UUID.class)
                .optional();
    }

    /** The row stays locked until this transaction ends, so that a number given back leaves no gap. */
    private ProjectNumber nextNumber(UUID branchId, Instant now) {
        record Branch(String code, String zone) {}
        Branch branch = jdbc.sql("select code, zone from branch where id = ?")
                .param(branchId)
                .query(Branch.class)
                .single();
        int year = LocalDate.ofInstant(now, ZoneId.of(branch.zone)).getYear();
        Integer running =
                jdbc.sql("""
                insert into project_number as n (branch_id, year, last) values (?, ?, 1)
                on conflict (branch_id, year) do update set last = n.last + 1 returning last
                """).params(branchId, year).query(Integer.class).single();
        return new ProjectNumber(branch.code, year, running);
    }
}
