package org.plumbrow.project;

import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.plumbrow.web.Access;
import org.plumbrow.web.BranchCard;
import org.plumbrow.web.May;
import org.plumbrow.web.NotForYourRole;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Role;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** May the person who asks open or change this project? Every room asks here before it touches a thing of a project. */
@Service
public class ProjectAccess {

    private final Access access;
    private final JdbcClient jdbc;
    private final ObjectProvider<CrewLeadReach> reach;

    ProjectAccess(Access access, JdbcClient jdbc, ObjectProvider<CrewLeadReach> reach) {
        this.access = access;
        this.jdbc = jdbc;
        this.reach = reach;
    }

    /**
     * @return the project's branch
     * @throws NotFound if there is no such project in the person's branches
     * @throws NotForYourRole if the role may not, or a crew lead's crew is not booked there
     */
    @Transactional(readOnly = true)
    public UUID require(UUID projectId, May act) {
        UUID branchId = branchOf(projectId);
        require(projectId, branchId, act);
        return branchId;
    }

    void require(UUID projectId, UUID branchId, May act) {
        access.require(branchId, act);
        if (onlyLeadsACrew(branchId) && !reaches(projectId)) {
            throw new NotForYourRole("Crew leads of a crew that is booked here");
        }
    }

    /** As {@link #require} without an exception, for a link that should only be shown to who may follow it. */
    public boolean may(UUID branchId, May act) {
        return access.may(branchId, act);
    }

    private boolean onlyLeadsACrew(UUID branchId) {
        BranchCard branch = access.visitor().branch(branchId).orElseThrow(NotFound::new);
        return branch.roles().equals(Set.of(Role.CREW_LEAD));
    }

    /** For somebody who only leads a crew there, the projects that they may open; empty for everybody else, who may open all. */
    public Optional<Set<UUID>> reachOf(UUID branchId) {
        if (!onlyLeadsACrew(branchId)) {
            return Optional.empty();
        }
        CrewLeadReach known = reach.getIfAvailable();
        return Optional.of(
                known == null ? Set.of() : known.within(access.visitor().personId(), branchId));
    }

    private boolean reaches(UUID projectId) {
        CrewLeadReach known = reach.getIfAvailable();
        return known != null && known.reaches(access.visitor().personId(), projectId);
    }

    private UUID branchOf(UUID projectId) {
        return jdbc.sql("select branch_id from project where id = ?")
                .param(projectId)
                .query(UUID.class)
                .optional()
                .orElseThrow(NotFound::new);
    }
}
