/**
 * The search for a better order, on numbers alone. Start at {@link org.plumbrow.calc.planning.search.PlanSearch}: a {@link org.plumbrow.calc.planning.search.BranchModel} holds the
 * problem as arrays, a {@link org.plumbrow.calc.planning.search.Decoder} turns an order into dates by the same rules as
 * {@link org.plumbrow.calc.planning.SerialPlanner} some hundred times faster, and
 * {@link org.plumbrow.calc.planning.search.ShiftSearch} looks for the order. What it finds goes back as a
 * {@link org.plumbrow.calc.planning.Guidance}, so that one planner alone makes every plan that leaves the core.
 */
@NullMarked
@NamedInterface("search")
package org.plumbrow.calc.planning.search;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
