package org.plumbrow.account;

import java.time.Instant;
import java.util.UUID;
import org.plumbrow.web.Actor;

/**
 * A branch was opened. Published within the transaction that makes it: a room that owes a new branch its settings
 * answers with a plain {@code @EventListener} and writes them in the same transaction.
 */
public record BranchOpened(UUID branchId, Actor by, Instant at) {}
