/**
 * The dates of one project: when each activity is done, what bound it, what people recorded; and the acts on them.
 * <p>Start at {@code ProjectDates}. Rules: the published plan is shown, a draft beside it for those who may see drafts; a
 * start that is settled is shown with its effect before it is saved.
 */
@NullMarked
package org.plumbrow.schedule.projectdates;

import org.jspecify.annotations.NullMarked;
