/**
 * Database: the embedded server, the wall between branches, background runs and their progress.
 * <p>Start at {@link BranchWall} (whose rows a thread may see) and {@code LocalPostgres} (the default server).
 * Rules: no scope, no rows; whoever opens the wall wider says so by name. Never knows what a row means.
 */
@NullMarked
@ApplicationModule(
        displayName = "Database",
        allowedDependencies = {})
package org.plumbrow.database;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
