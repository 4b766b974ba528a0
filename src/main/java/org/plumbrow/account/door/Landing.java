package org.plumbrow.account.door;

import java.util.Set;
import org.plumbrow.web.Access;
import org.plumbrow.web.BranchCard;
import org.plumbrow.web.Role;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;

/** Where one lands: managers where they plan, project managers and designers at their projects, crew leads at their week. */
@Controller
class Landing {

    private final Access access;

    Landing(Access access) {
        this.access = access;
    }

    @GetMapping("/")
    String land() {
        return "redirect:"
                + access.presentBranch().map(BranchCard::roles).map(Landing::of).orElse("/you");
    }

    static String of(Set<Role> roles) {
        if (roles.contains(Role.OWNER) || roles.contains(Role.MANAGER)) {
            return "/look-ahead";
        }
        if (roles.contains(Role.PROJECT_MANAGER) || roles.contains(Role.DESIGNER)) {
            return "/projects";
        }
        return roles.contains(Role.CREW_LEAD) ? "/crews/week" : "/you";
    }
}
