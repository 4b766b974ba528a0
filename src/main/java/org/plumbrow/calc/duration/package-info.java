/**
 * Durations: the activities of one project, made from its mounting and quantities, each with its working time or wait.
 *
 * <p>Start at {@link org.plumbrow.calc.duration.ProjectActivities}. The rates are an input
 * ({@link org.plumbrow.calc.duration.DurationTables}); {@link org.plumbrow.calc.duration.ShippedTable} reads those a new
 * branch starts with. Every duration carries what it was computed from. Knows nothing of crews by name, dates or plans.
 */
@NullMarked
@NamedInterface("duration")
package org.plumbrow.calc.duration;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
