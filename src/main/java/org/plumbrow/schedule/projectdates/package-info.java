/**
 * The dates of one project: when each activity is done, what bound it, what people recorded; and the acts on them.
 * <p>Start at {@code ProjectDates}. Rules: the published plan is shown, a draft beside it for those who may see drafts; a
 * start that is settled is shown with its effect on every promise before it is saved ({@code StartController}; the crew calendar leads there).
 */
@NullMarked
package org.plumbrow.schedule.projectdates;

import org.jspecify.annotations.NullMarked;
