/**
 * What a system is worth: its size from the use, what the site uses itself and what it gives away, savings over the years,
 * and what a promise of production may cost. Start at {@link org.plumbrow.calc.finance.SystemSize},
 * {@link org.plumbrow.calc.finance.Savings} and {@link org.plumbrow.calc.finance.GuaranteeRisk}.
 * <p>Rules: year 1 is the first year, neither escalated nor degraded; growth is geometric; discounting at the end of each
 * year; money is kept unrounded and rounded half up to cents only when it is shown ({@link org.plumbrow.calc.finance.Cents}).
 * Results are planning aids, no offer and no advice on taxes.
 */
@NullMarked
@NamedInterface("finance")
package org.plumbrow.calc.finance;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
