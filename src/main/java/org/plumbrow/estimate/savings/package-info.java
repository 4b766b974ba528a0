/**
 * Savings of a project: what the system takes off the electricity bill over the years, as a range, and what that makes of
 * its price.
 * <p>Start at {@link org.plumbrow.estimate.savings.SavingsBook}. Rules: the sums are in {@code calc.finance}, nothing of
 * them is repeated here; yield, use and price are read where they stand and never typed twice; until somebody writes the
 * terms down the usual ones count, and the page says so. Money: not for designers and crews, so the journal names what was
 * changed and no figure.
 */
@NullMarked
@NamedInterface("savings")
package org.plumbrow.estimate.savings;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
