package org.plumbrow.web;

import java.time.ZoneId;
import java.util.Set;
import java.util.UUID;

/** A branch as its people see it at the top of a page, with what they are there. */
public record BranchCard(UUID id, String code, String name, ZoneId zone, Set<Role> roles) {

    public boolean may(May act) {
        return act.allows(roles);
    }
}
