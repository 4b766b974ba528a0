package org.plumbrow.project;

import java.util.UUID;

/** Something that the plan depends on has changed: site, contract, promise, stage, standing, weight or people. Published in the change's transaction. */
public record ProjectChanged(UUID projectId, UUID branchId) {}
