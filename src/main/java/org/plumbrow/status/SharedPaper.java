package org.plumbrow.status;

import java.time.Instant;
import java.util.UUID;

/**
 * A paper that the customer may open.
 *
 * @param slot its number at the customer's side: addresses name it by this, not by its id
 * @param title as the customer reads it
 */
public record SharedPaper(UUID evidenceId, int slot, String title, Instant sharedAt, String sharedBy) {}
