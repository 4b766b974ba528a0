package org.plumbrow.account;

import java.util.UUID;
import org.plumbrow.web.Actor;

/**
 * A room that gives each new branch something to start with (settings, templates) answers here, in the transaction that
 * opens the branch and with that branch's rows in reach.
 */
public interface BranchOpened {

    void opened(UUID branchId, Actor by);
}
