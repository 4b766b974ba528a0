/**
 * Houses with animals and no power: heat and moisture of the animals
 * ({@link org.plumbrow.calc.ridethrough.house.Animal}, {@link org.plumbrow.calc.ridethrough.house.Species}), the house as
 * one node of air with a share of what stands in it ({@link org.plumbrow.calc.ridethrough.house.HouseBalance}), and the
 * minutes to each limit ({@link org.plumbrow.calc.ridethrough.house.HouseQuestion}, where to start).
 *
 * <p>Rules: animal masses in kg, air in degC, heat in W; one hpu ("heat producing unit") gives 1,000 W in all at 20 degC.
 * Sources stand at each relation; those marked "from memory" must be checked against a licensed copy before anybody
 * relies on them. Results are planning aids: the grower and the veterinarian decide.
 */
@NullMarked
@NamedInterface("house")
package org.plumbrow.calc.ridethrough.house;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
