/**
 * The look-ahead: crews by working days for eight weeks, what is promised on the same days, and what needs a decision.
 * <p>Start at {@code LookAheadReading}. Rules: the page's heading is the answer; what somebody must act on comes first; a
 * number of queries that does not grow with the number of projects.
 */
@NullMarked
package org.plumbrow.schedule.lookahead;

import org.jspecify.annotations.NullMarked;
