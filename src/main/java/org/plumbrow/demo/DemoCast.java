package org.plumbrow.demo;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
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
    record Cast(UUID branchId, Map<String, UUID> people, Map<String, Visitor> visitors, Map<String, UUID> crews) {

        Visitor manager() {
            return visitor("Ines");
        }

        Visitor visitor(String name) {
            return visitors.get(name);
        }

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
        List<SeedRow> rows = SeedRow.of("people.csv");
        List<UUID> ids = accounts.open(rows.stream()
                .map(row -> new Accounts.NewAccount(row.text("name"), row.text("email"), password, true))
                .toList());
        for (int i = 0; i < rows.size(); i++) {
            accounts.give(ids.get(i), branch, roles(rows.get(i)));
            people.put(rows.get(i).text("name"), ids.get(i));
        }
        Map<String, Visitor> known = new LinkedHashMap<>();
        people.forEach((name, id) -> known.put(name, visitors.find(id).orElseThrow()));
        return new Cast(branch, people, known, new LinkedHashMap<>());
    }

    private static Set<Role> roles(SeedRow row) {
        Set<Role> roles = EnumSet.noneOf(Role.class);
        row.parts("roles", ";").forEach(role -> roles.add(Role.valueOf(role)));
        return roles;
    }
}
