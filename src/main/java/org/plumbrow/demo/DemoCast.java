package org.plumbrow.demo;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.plumbrow.account.Accounts;
import org.plumbrow.account.Branches;
import org.plumbrow.project.ProjectFacts.InCharge;
import org.plumbrow.web.Actor;
import org.plumbrow.web.Role;
import org.plumbrow.web.Visitor;
import org.plumbrow.web.VisitorSource;
import org.springframework.stereotype.Component;

/** The firm, its branch and its people. */
@Component
@WithDemo
class DemoCast {

    static final String BRANCH_CODE = "QV";

    private final Accounts accounts;
    private final Branches branches;
    private final VisitorSource visitors;

    DemoCast(Accounts accounts, Branches branches, VisitorSource visitors) {
        this.accounts = accounts;
        this.branches = branches;
        this.visitors = visitors;
    }

    /**
     * @param people by name
     * @param crews by name, filled when they are set up
     */
    record Cast(UUID branchId, Map<String, UUID> people, Visitor manager, Map<String, UUID> crews) {

        Actor actor(String name) {
            return new Actor(people.get(name), name);
        }

        InCharge inCharge(String name) {
            return new InCharge(people.get(name), name);
        }
    }

    Cast enter(String password) {
        accounts.found("Quillback Valley Solar");
        UUID branch = branches.open(BRANCH_CODE, "Quillback Valley", Story.VALLEY, Actor.named("Maren"));
        Map<String, UUID> people = new LinkedHashMap<>();
        for (SeedRow row : SeedRow.of("people.csv")) {
            UUID person = accounts.open(new Accounts.NewAccount(row.text("name"), row.text("email"), password, true));
            accounts.give(person, branch, roles(row));
            people.put(row.text("name"), person);
        }
        return new Cast(branch, people, visitors.find(people.get("Ines")).orElseThrow(), new LinkedHashMap<>());
    }

    private static Set<Role> roles(SeedRow row) {
        Set<Role> roles = EnumSet.noneOf(Role.class);
        row.parts("roles", ";").forEach(role -> roles.add(Role.valueOf(role)));
        return roles;
    }
}
