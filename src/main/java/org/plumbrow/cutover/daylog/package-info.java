/**
 * The day log of a cutover: fourteen steps, five hold points, what was read, who signed. What happened is only ever
 * added; a correction stands beside what it corrects.
 *
 * <p>Start at {@code DayLogBook} (what may be written), {@code Procedure} (the steps) and {@code LogState} (what the
 * entries say). A hold point is never jumped: {@code HoldRules}.
 */
@NullMarked
@NamedInterface("daylog")
package org.plumbrow.cutover.daylog;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
