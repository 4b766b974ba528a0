package org.plumbrow.account.people;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.plumbrow.web.Option;
import org.plumbrow.web.Role;

/** The roles that a branch gives; owning the firm is none of them. */
enum BranchRole {
    MANAGER,
    PROJECT_MANAGER,
    DESIGNER,
    CREW_LEAD;

    Role role() {
        return Role.valueOf(name());
    }

    static List<Option> options() {
        return Arrays.stream(values())
                .map(role -> new Option(role.name(), role.role().words()))
                .toList();
    }

    /** "branch manager, designer"; "no role" for none. */
    static String words(Collection<BranchRole> roles) {
        return roles.isEmpty()
                ? "no role"
                : roles.stream().sorted().map(role -> role.role().words()).collect(Collectors.joining(", "));
    }

    static Set<BranchRole> of(List<String> names) {
        return names.stream().map(BranchRole::valueOf).collect(Collectors.toUnmodifiableSet());
    }
}
