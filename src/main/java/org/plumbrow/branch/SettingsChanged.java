package org.plumbrow.branch;

import java.util.UUID;

/** A setting of a branch has changed; published with each line of the change log, in the change's transaction. */
public record SettingsChanged(UUID branchId) {}
