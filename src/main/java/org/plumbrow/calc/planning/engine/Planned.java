package org.plumbrow.calc.planning.engine;

import java.util.Map;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.Promise;

/**
 * A plan and what is proved about all others. What is proved holds for every plan in which what is settled stands where it
 * stands and that places no fewer activities.
 *
 * @param lowerBound no plan has fewer weighted half-days late
 * @param lateAlone of each promise: half-days late in any plan, for its own chain of work and waits; without an entry 0
 */
public record Planned(Plan plan, long lowerBound, Map<Promise, Integer> lateAlone) {}
