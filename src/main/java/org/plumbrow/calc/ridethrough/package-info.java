/**
 * How long what is on a site can stand without power: stores that warm ({@link org.plumbrow.calc.ridethrough.ColdStore},
 * {@link org.plumbrow.calc.ridethrough.MilkTank}, {@link org.plumbrow.calc.ridethrough.Greenhouse}), a home, and what a
 * generator carries ({@link org.plumbrow.calc.ridethrough.GeneratorCover}). Houses with animals are in {@code house}.
 *
 * <p>Start at {@link org.plumbrow.calc.ridethrough.RideThrough}, the answer that every load gives. Rules: the shortest of
 * all limits counts; half of its short end is planned with; a result carries its cautions and never says that something
 * may be done without watching. Every figure is a planning aid: the grower, the veterinarian, the inspector decide.
 */
@NullMarked
@NamedInterface("ridethrough")
package org.plumbrow.calc.ridethrough;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
