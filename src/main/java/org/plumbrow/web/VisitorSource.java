package org.plumbrow.web;

import java.util.Optional;
import java.util.UUID;

/** Knows people: supplied by the account room. */
public interface VisitorSource {

    /** The person with roles as of now; empty when the account has ended. */
    Optional<Visitor> find(UUID personId);

    /** Remembers which branch the person looked at last. */
    void looksAt(UUID personId, UUID branchId);
}
