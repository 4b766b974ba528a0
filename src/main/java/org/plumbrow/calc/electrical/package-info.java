/**
 * Electrical checks of a solar system, as a plan reviewer makes them. Start at {@link org.plumbrow.calc.electrical.Check}
 * (one rule held against a design), made by {@link org.plumbrow.calc.electrical.StringChecks},
 * {@link org.plumbrow.calc.electrical.ConductorChecks}, {@link org.plumbrow.calc.electrical.ConnectionChecks},
 * {@link org.plumbrow.calc.electrical.RoofChecks} and {@link org.plumbrow.calc.electrical.VoltageRise} from the code's
 * tables; {@link org.plumbrow.calc.electrical.ServiceVoltage} judges readings of a service,
 * {@link org.plumbrow.calc.electrical.StringTest} those of strings. Results are planning aids; the code in force there, the
 * maker, the utility and a licensed person decide.
 */
@NullMarked
@NamedInterface("electrical")
package org.plumbrow.calc.electrical;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
