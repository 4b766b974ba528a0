/**
 * The plan of a branch as good as the work allowed makes it: start at {@link org.plumbrow.calc.planning.engine.Planner}.
 * In: a problem, the plan that people know (if any), how much work. Out: a checked plan, what it costs, and what no plan
 * can undercut. First an order by urgency, then a search over orders, then pieces of the plan given to the constraint
 * solver (large-neighbourhood search: Shaw, CP 1998), and for small branches the whole.
 */
@NullMarked
@NamedInterface("planning-engine")
package org.plumbrow.calc.planning.engine;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
