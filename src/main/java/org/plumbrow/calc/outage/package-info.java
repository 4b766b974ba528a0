/**
 * Outage: how long the power will be off, on which days it can be, and whether it may stay on afterwards.
 *
 * <p>Start at {@link org.plumbrow.calc.outage.OutageMinutes} (how long), {@link org.plumbrow.calc.outage.WindowSearch}
 * (which days, best first, and why the others are out), {@link org.plumbrow.calc.outage.LatestReversal} and
 * {@link org.plumbrow.calc.outage.SupplyRestored}. Never asks a clock, never says that equipment may be touched.
 */
@NullMarked
@NamedInterface("outage")
package org.plumbrow.calc.outage;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
