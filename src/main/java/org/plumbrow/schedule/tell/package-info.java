/**
 * Telling: whom the published plan concerns, what changed for each against the plan before it, and who was told.
 * <p>Start at {@code TellReading}. Rules: nobody is told twice of one plan; crew leads and customers get a notice through
 * the outbox or are told by a person, who says so here; a utility is written to from the outage's own page only.
 */
@NullMarked
package org.plumbrow.schedule.tell;

import org.jspecify.annotations.NullMarked;
