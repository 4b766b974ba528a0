package org.plumbrow.crew;

import java.util.UUID;

/** Crews, machines or their absences of a branch changed; published in the change's transaction. */
public record CrewsChanged(UUID branchId) {}
