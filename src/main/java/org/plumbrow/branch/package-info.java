/**
 * Branch: what a branch decides for itself. Working days and hours, yard and travel, utilities with their notice and
 * slots, permit offices, rates of work, waits, weather, and the log of every change to these.
 * <p>Start at {@link org.plumbrow.branch.BranchSettings} (what other rooms read, few queries for a whole branch);
 * the pages lie in the sub-packages, one for each subject. Rules: limits stand in the forms and once more in the
 * database; a new branch starts with {@code NewBranchSettings} in the transaction that opens it.
 * Other rooms keep their own changes in {@link org.plumbrow.branch.ChangeLog} and answer forms by
 * {@link org.plumbrow.branch.Saving}. Tells others:
 * {@link org.plumbrow.branch.SettingsChanged}. Never knows a project or a crew.
 */
@NullMarked
@ApplicationModule(
        displayName = "Branch",
        allowedDependencies = {"database", "web", "notice", "account", "calc", "calc :: calendar", "calc :: duration"})
package org.plumbrow.branch;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
