package org.plumbrow.branch;

import java.util.UUID;
import org.plumbrow.web.Access;
import org.plumbrow.web.NotFound;
import org.springframework.stereotype.Component;

/** Who may read a branch's settings: its own people; and work in the background, which the wall's scope holds. */
@Component
class BranchReading {

    private final Access access;

    BranchReading(Access access) {
        this.access = access;
    }

    /** @throws NotFound if somebody asks who has nothing to do with that branch */
    void mayRead(UUID branchId) {
        access.present().ifPresent(visitor -> visitor.branch(branchId).orElseThrow(NotFound::new));
    }
}
