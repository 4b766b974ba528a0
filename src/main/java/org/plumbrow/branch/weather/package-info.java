/** Half-days that rain, snow and mud take, by month and family of work. */
@NullMarked
@NamedInterface("weather")
package org.plumbrow.branch.weather;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
