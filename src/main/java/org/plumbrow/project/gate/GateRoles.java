package org.plumbrow.project.gate;

import java.util.EnumSet;
import java.util.Set;
import java.util.UUID;
import org.plumbrow.project.Duty;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.Stage;
import org.plumbrow.web.Access;
import org.plumbrow.web.May;
import org.plumbrow.web.NotForYourRole;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Role;
import org.springframework.stereotype.Component;

/** Who may answer which item: managers all, a designer what surveyor and designer do, a crew lead what is done on site. */
@Component
class GateRoles {

    private static final Set<Duty> OF_DESIGNERS = EnumSet.of(Duty.SURVEYOR, Duty.DESIGNER);
    private static final Set<Duty> OF_CREW_LEADS = EnumSet.of(Duty.ELECTRICIAN, Duty.PERSON_IN_CHARGE);
    private static final Set<Stage> ON_SITE = EnumSet.of(Stage.INSTALLED, Stage.CUTOVER, Stage.COMMISSIONED);

    private final ProjectAccess projects;
    private final Access access;

    GateRoles(ProjectAccess projects, Access access) {
        this.projects = projects;
        this.access = access;
    }

    /** @return the project's branch */
    UUID require(UUID projectId, May act) {
        return projects.require(projectId, act);
    }

    /** @throws NotForYourRole if the item is not for the person's role */
    void requireItem(UUID branchId, AskedItem item) {
        if (!mayAnswer(branchId, item)) {
            throw new NotForYourRole(whoMay(item));
        }
    }

    boolean may(UUID branchId, May act) {
        return access.may(branchId, act);
    }

    boolean mayAnswer(UUID branchId, AskedItem item) {
        if (access.may(branchId, May.PASS_GATE)) {
            return true;
        }
        Set<Role> roles =
                access.visitor().branch(branchId).orElseThrow(NotFound::new).roles();
        boolean asDesigner = roles.contains(Role.DESIGNER) && OF_DESIGNERS.contains(item.duty());
        boolean asCrewLead = roles.contains(Role.CREW_LEAD) && isOnSite(item);
        return asDesigner || asCrewLead;
    }

    private static boolean isOnSite(AskedItem item) {
        return ON_SITE.contains(item.stage()) && OF_CREW_LEADS.contains(item.duty());
    }

    private static String whoMay(AskedItem item) {
        if (OF_DESIGNERS.contains(item.duty())) {
            return "Branch managers, project managers and designers";
        }
        return isOnSite(item)
                ? "Branch managers, project managers and crew leads"
                : "Branch managers and project managers";
    }
}
