package org.plumbrow.design.draft;

import java.time.Instant;
import java.util.UUID;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.part.DesignParts;

/** A design as it left the house; never changed. */
record Revision(UUID id, String letter, DesignFacts facts, DesignParts parts, String why, Instant at, String by) {}
