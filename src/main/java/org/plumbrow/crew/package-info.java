/**
 * Crew: who works in a branch, what they can do, when they are away, and the machines they share.
 * <p>Start at {@link org.plumbrow.crew.Crews} (what the plan reads, few queries for a whole branch); {@code CrewEditing}
 * and {@code EquipmentEditing} change. Rules: absences of one crew or one machine never overlap, which the database
 * holds; every change stands in the branch's change log, which tells others.
 * Never knows what a crew works on: that is the plan's.
 */
@NullMarked
@ApplicationModule(
        displayName = "Crew",
        allowedDependencies = {"database", "web", "account", "branch", "calc", "calc :: calendar", "calc :: duration"})
package org.plumbrow.crew;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
