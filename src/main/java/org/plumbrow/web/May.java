package org.plumbrow.web;

import static org.plumbrow.web.Role.CREW_LEAD;
import static org.plumbrow.web.Role.DESIGNER;
import static org.plumbrow.web.Role.MANAGER;
import static org.plumbrow.web.Role.OWNER;
import static org.plumbrow.web.Role.PROJECT_MANAGER;

import java.util.Collection;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;

/** What may be done in a branch, and by which roles: the one table of permissions. A firm owner may do everything. */
public enum May {
    /** Read projects; a crew lead only those on which the crew is booked, which the project room checks. */
    SEE_PROJECTS(MANAGER, PROJECT_MANAGER, DESIGNER, CREW_LEAD),
    SEE_JOURNAL(MANAGER, PROJECT_MANAGER, DESIGNER),
    SEE_MONEY(MANAGER, PROJECT_MANAGER),
    /** What a system will make, from which weather; not what it is worth. */
    SEE_ESTIMATE(MANAGER, PROJECT_MANAGER, DESIGNER),
    /** What all promises of production of the branch may cost together. */
    SEE_BOOK(MANAGER),
    EDIT_PROJECT(MANAGER, PROJECT_MANAGER),
    /** Write what was read on the site; a surveyor without projects of their own is a designer. */
    WRITE_SURVEY(MANAGER, PROJECT_MANAGER, DESIGNER),
    /** Read the horizon again on day one. */
    WRITE_DAY_ONE(MANAGER, PROJECT_MANAGER, DESIGNER, CREW_LEAD),
    /** Ask for a reading again. */
    REMARK_ON_SURVEY(MANAGER, PROJECT_MANAGER, DESIGNER),
    /** Answer a gate item; which items a designer or a crew lead may answer, the gate says by the item's duty. */
    ANSWER_GATE_ITEM(MANAGER, PROJECT_MANAGER, DESIGNER, CREW_LEAD),
    WRITE_EVIDENCE(MANAGER, PROJECT_MANAGER, DESIGNER, CREW_LEAD),
    PASS_GATE(MANAGER, PROJECT_MANAGER),
    WAIVE(MANAGER),
    IMPORT(MANAGER),
    EXPORT(MANAGER, PROJECT_MANAGER),
    SEE_LOOK_AHEAD(MANAGER, PROJECT_MANAGER),
    CHANGE_PLAN(MANAGER),
    PUBLISH_PLAN(MANAGER),
    RECORD_PROGRESS(MANAGER, PROJECT_MANAGER, CREW_LEAD),
    SEE_CREWS(MANAGER, PROJECT_MANAGER, CREW_LEAD),
    SEE_CUTOVERS(MANAGER, PROJECT_MANAGER, CREW_LEAD),
    BOOK_OUTAGE(MANAGER, PROJECT_MANAGER),
    RUN_CUTOVER(MANAGER, PROJECT_MANAGER, CREW_LEAD),
    SEE_DESIGN(MANAGER, PROJECT_MANAGER, DESIGNER, CREW_LEAD),
    /** Draw, freeze a revision, keep the catalogue. */
    WRITE_DESIGN(MANAGER, PROJECT_MANAGER, DESIGNER),
    SHARE_WITH_CUSTOMER(MANAGER, PROJECT_MANAGER),
    CHANGE_SETTINGS(MANAGER),
    INVITE(MANAGER),
    SEE_OUTBOX(MANAGER),
    /** Sign-in and reset mails of everybody, new branches, the firm itself. */
    RUN_FIRM();

    private final Set<Role> roles;

    May(Role... roles) {
        this.roles = EnumSet.of(OWNER, roles);
    }

    public boolean allows(Collection<Role> held) {
        return held.stream().anyMatch(roles::contains);
    }

    /** Who may, as a sentence's subject: "Branch managers and project managers". */
    public String who() {
        Set<Role> named = EnumSet.copyOf(roles);
        if (named.size() > 1) {
            named.remove(OWNER);
        }
        String all = named.stream().map(Role::plural).collect(Collectors.joining(", "));
        int last = all.lastIndexOf(", ");
        String joined = last < 0 ? all : all.substring(0, last) + " and " + all.substring(last + 2);
        return joined.charAt(0) + joined.substring(1).toLowerCase(java.util.Locale.ROOT);
    }
}
