/**
 * What on a site suffers without power, and how long it stands at a given hour.
 *
 * <p>Start at {@link org.plumbrow.cutover.ridethrough.SiteLoads} (what people wrote, kind by kind) and
 * {@link org.plumbrow.cutover.ridethrough.LoadAnswers} (how long each stands in an hour's weather). Rules: every answer
 * is a range and its short end counts; where medical equipment is named there is no figure; the balances themselves are
 * in {@code calc.ridethrough}. Never promises that anything stands so long.
 */
@NullMarked
@NamedInterface("ridethrough")
package org.plumbrow.cutover.ridethrough;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
