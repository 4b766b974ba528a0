/**
 * Electrical checks of a service. Start at {@link org.plumbrow.calc.electrical.ServiceVoltage}: is a set of voltage
 * readings within the limits of its service. Results are planning aids; the utility's own table and a licensed person
 * decide.
 */
@NullMarked
@NamedInterface("electrical")
package org.plumbrow.calc.electrical;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
