/**
 * Database: the embedded server, the wall between branches, background runs and their progress.
 * <p>Start at {@link org.plumbrow.database.BranchWall} (whose rows a thread may see),
 * {@link org.plumbrow.database.BackgroundRuns} (long work that people watch),
 * {@link org.plumbrow.database.BackgroundTasks} (small work that must survive a crash) and
 * {@code server.LocalPostgres} (the default server).
 * Rules: no scope, no rows; whoever opens the wall wider says so by name; background work begins after the commit of the
 * change that asked for it and bears being done again. Never knows what a row means.
 */
@NullMarked
@ApplicationModule(
        displayName = "Database",
        allowedDependencies = {})
package org.plumbrow.database;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
