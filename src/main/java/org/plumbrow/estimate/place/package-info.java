/**
 * The place of an array: what its horizon takes, before the work and on day one, and whether it stands on the roof or on
 * the ground.
 * <p>Start at {@code ShadeReading} and {@code PlaceReading} (what the pages show) and
 * {@link org.plumbrow.estimate.place.Placements} (what was decided with the customer). Rules: readings are the survey's
 * and the estimate's, nothing is read here; what nobody has read is said with the page where it is written; rules of thumb
 * name themselves; no money.
 */
@NullMarked
@NamedInterface("place")
package org.plumbrow.estimate.place;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
