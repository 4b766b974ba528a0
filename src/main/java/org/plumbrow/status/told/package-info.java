/**
 * What is told without anybody asking: the customer is reminded of the outage, the project manager hears of a notice
 * that did not leave.
 * <p>Start at {@code OutageReminders} and {@code UndeliveredNotices}.
 */
@NullMarked
package org.plumbrow.status.told;

import org.jspecify.annotations.NullMarked;
