package org.plumbrow.account.people;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** Which roles a person shall have in the branch; none ends the membership. */
record RolesForm(@Nullable List<BranchRole> roles, @Nullable Long version) {

    static RolesForm of(Memberships.Member member) {
        return new RolesForm(List.copyOf(member.roles()), member.version());
    }

    List<BranchRole> wanted() {
        return roles == null ? List.of() : roles;
    }

    long openedVersion() {
        return version == null ? -1 : version;
    }
}
