package org.plumbrow.project;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.plumbrow.web.Access;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What a project is, for pages (checked against who asks) and for work in the background (within the thread's branches). */
@Service
@Transactional(readOnly = true)
public class Projects {

    private final ProjectRows rows;
    private final ProjectAccess projectAccess;
    private final Access access;
    private final JdbcClient jdbc;

    Projects(ProjectRows rows, ProjectAccess projectAccess, Access access, JdbcClient jdbc) {
        this.rows = rows;
        this.projectAccess = projectAccess;
        this.access = access;
        this.jdbc = jdbc;
    }

    /**
     * A project as the person who asks may see it: without the price for a crew lead or a designer.
     *
     * @throws NotFound if it is not there for them
     * @throws org.plumbrow.web.NotForYourRole if it is not for their role
     */
    public ProjectFacts facts(UUID projectId) {
        ProjectFacts facts = factsUnchecked(projectId);
        projectAccess.require(projectId, facts.branchId(), May.SEE_PROJECTS);
        return seenBy(facts);
    }

    /**
     * The projects of a branch in the plan (signed, not commissioned, neither on hold nor called off), by number, as the
     * person who asks may see them.
     */
    public List<ProjectFacts> open(UUID branchId) {
        access.require(branchId, May.SEE_PROJECTS);
        Optional<Set<UUID>> reached = projectAccess.reachOf(branchId);
        return rows.inThePlan(branchId).stream()
                .filter(project -> reached.isEmpty() || reached.get().contains(project.id()))
                .map(this::seenBy)
                .toList();
    }

    /** For background work, private links and rules: nobody is asked for; only the branch wall holds. @throws NotFound */
    public ProjectFacts factsUnchecked(UUID projectId) {
        return factsUnchecked(Set.of(projectId)).stream().findFirst().orElseThrow(NotFound::new);
    }

    /** As {@link #factsUnchecked(UUID)} for several at once, by number; ids that are not there are left out. */
    public List<ProjectFacts> factsUnchecked(Collection<UUID> projectIds) {
        return rows.ofIds(projectIds);
    }

    /** As {@link #open} for background work. */
    public List<ProjectFacts> openUnchecked(UUID branchId) {
        return rows.inThePlan(branchId);
    }

    /** The people at the customer's side, who decides first. The customer itself is not among them. */
    public List<ProjectContact> contacts(UUID projectId) {
        projectAccess.require(projectId, May.SEE_PROJECTS);
        return contactsUnchecked(projectId);
    }

    /** As {@link #contacts} for background work and notices. */
    public List<ProjectContact> contactsUnchecked(UUID projectId) {
        return jdbc.sql("""
                select id, project_id, name, part, phone, email, language, decides from project_contact
                 where project_id = ? and kind = 'CONTACT' and ended_at is null order by decides desc, since, id
                """).param(projectId).query(ProjectContact.class).list();
    }

    /** Somebody at the customer's side who is still there: for private links, whose subject they are. */
    public Optional<ProjectContact> contactUnchecked(UUID contactId) {
        return jdbc.sql("""
                select id, project_id, name, part, phone, email, language, decides from project_contact
                 where id = ? and kind = 'CONTACT' and ended_at is null
                """).param(contactId).query(ProjectContact.class).optional();
    }

    private ProjectFacts seenBy(ProjectFacts facts) {
        return access.may(facts.branchId(), May.SEE_MONEY) ? facts : facts.withoutMoney();
    }
}
