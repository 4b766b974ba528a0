/**
 * The look-ahead: crews by working days for eight weeks, what is promised on the same days, and what needs a decision.
 * The crew calendar beside it shows four weeks work by work, each to be moved; its lists stand in for the grid on a phone.
 * <p>Start at {@code LookAheadReading} and {@code CalendarReading}. Rules: the page's heading is the answer; what somebody must act on comes first; a
 * number of queries that does not grow with the number of projects.
 */
@NullMarked
package org.plumbrow.schedule.lookahead;

import org.jspecify.annotations.NullMarked;
