package org.plumbrow.web;

import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.plumbrow.database.BranchWall;
import org.springframework.stereotype.Component;

/**
 * Who is asking, and may they? Every service asks here before it reads or changes anything of a branch.
 * A branch that is not the visitor's does not exist (404); a role that may not is told who may (403).
 */
@Component
public class Access {

    private static final ThreadLocal<@Nullable Asking> ASKING = new ThreadLocal<>();

    private record Asking(Visitor visitor, @Nullable BranchCard branch) {}

    /** @throws NotSignedIn outside a request of a signed-in person and outside {@link #as} */
    public Visitor visitor() {
        return present().orElseThrow(NotSignedIn::new);
    }

    public Optional<Visitor> present() {
        return Optional.ofNullable(ASKING.get()).map(Asking::visitor);
    }

    /** The branch being looked at: the one named in the address, else the one seen last. @throws NotFound without any */
    public BranchCard branch() {
        return presentBranch().orElseThrow(NotFound::new);
    }

    public Optional<BranchCard> presentBranch() {
        return Optional.ofNullable(ASKING.get()).map(Asking::branch);
    }

    public Actor actor() {
        return visitor().actor();
    }

    /**
     * @throws NotFound if the branch is not one of the visitor's
     * @throws NotForYourRole if the visitor's roles there do not allow it
     */
    public void require(UUID branchId, May act) {
        BranchCard branch = visitor().branch(branchId).orElseThrow(NotFound::new);
        if (!branch.may(act)) {
            throw new NotForYourRole(act);
        }
    }

    /** As {@link #require(UUID, May)} for the branch being looked at, which it returns. */
    public BranchCard require(May act) {
        BranchCard branch = branch();
        require(branch.id(), act);
        return branch;
    }

    public boolean may(UUID branchId, May act) {
        return present()
                .flatMap(visitor -> visitor.branch(branchId))
                .filter(branch -> branch.may(act))
                .isPresent();
    }

    /** For templates: {@code ${@access.may('WAIVE')}}, in the branch being looked at. */
    public boolean may(String act) {
        return presentBranch().filter(branch -> branch.may(May.valueOf(act))).isPresent();
    }

    /** Runs the work as this person, with the rows of their branches only. */
    public <T> T as(Visitor visitor, Supplier<T> work) {
        return as(visitor, visitor.lastBranch().orElse(null), work);
    }

    <T> T as(Visitor visitor, @Nullable BranchCard branch, Supplier<T> work) {
        Asking before = ASKING.get();
        ASKING.set(new Asking(visitor, branch));
        try {
            return BranchWall.within(
                    visitor.branches().stream().map(BranchCard::id).toList(), work);
        } finally {
            if (before == null) {
                ASKING.remove();
            } else {
                ASKING.set(before);
            }
        }
    }
}
