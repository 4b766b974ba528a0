/**
 * While and after the power is off, for those who are not there: the day followed as taps arrive.
 *
 * <p>Start at {@code LiveDays} (what is shown while it happens). All of it reads {@code daylog.DayStory}, what a log tells
 * at one moment; nothing here writes into a log, and nothing says that equipment may be touched.
 */
@NullMarked
@NamedInterface("after")
package org.plumbrow.cutover.after;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
