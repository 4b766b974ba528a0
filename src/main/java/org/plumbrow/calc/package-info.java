/**
 * The pure core: records in, records out; no clock, no I/O, no framework. Each sub-package is one computation that a
 * room names in its own {@code package-info} before it may use it.
 */
@NullMarked
@ApplicationModule(
        displayName = "Computations",
        allowedDependencies = {})
package org.plumbrow.calc;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
