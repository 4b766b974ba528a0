/**
 * Lead times: how long an office, a utility or a supplier takes, learned from what it answered before.
 *
 * <p>Start at {@link org.plumbrow.calc.leadtime.LeadTimeLearning}. It begins with the branch's table of waits
 * ({@link org.plumbrow.calc.duration.WaitTime}). Knows no dates and no offices: days in, days out.
 */
@NullMarked
@NamedInterface("leadtime")
package org.plumbrow.calc.leadtime;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
