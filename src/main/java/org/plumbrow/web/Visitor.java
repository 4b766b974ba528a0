package org.plumbrow.web;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The person who is asking: read anew for each request, so that a lost role is lost at once.
 *
 * @param branches every branch the person may see, by name; empty for a person without any
 * @param lastBranchId the branch seen last
 */
public record Visitor(
        UUID personId,
        String name,
        String email,
        List<BranchCard> branches,
        @Nullable UUID lastBranchId) {

    public Optional<BranchCard> branch(UUID branchId) {
        return branches.stream().filter(card -> card.id().equals(branchId)).findFirst();
    }

    Optional<BranchCard> branchCalled(String code) {
        return branches.stream()
                .filter(card -> card.code().equalsIgnoreCase(code))
                .findFirst();
    }

    Optional<BranchCard> lastBranch() {
        return branches.stream()
                .filter(card -> card.id().equals(lastBranchId))
                .findFirst()
                .or(() -> branches.stream().findFirst());
    }

    /** Highest role first: what stands behind the name at the top of a page. */
    public String roleWordsIn(BranchCard branch) {
        return branch.roles().stream().sorted().map(Role::words).limit(1).collect(Collectors.joining());
    }

    public Actor actor() {
        return new Actor(personId, name);
    }
}
