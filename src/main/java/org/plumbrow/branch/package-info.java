/**
 * Branch: the firm's branches with their working calendars, utilities, permit offices, rates and weather months.
 * <p>Rules: each change of a setting leaves a line in the change log. Never knows a project.
 */
@NullMarked
@ApplicationModule(
        displayName = "Branch",
        allowedDependencies = {"database", "web", "notice", "account", "calc", "calc :: calendar", "calc :: duration"})
package org.plumbrow.branch;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
