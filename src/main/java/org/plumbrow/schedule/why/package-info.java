/**
 * Why a date is what it is: the chain of what binds it, from today to the date and across the branch, and what would move
 * it, computed. Start at {@code WhyThisDate}. Nothing is stored.
 */
@NullMarked
package org.plumbrow.schedule.why;

import org.jspecify.annotations.NullMarked;
