/**
 * Weather, use, size, yield and orientation of a project: what is brought, what is computed from it, and the pages.
 * <p>Start at {@link org.plumbrow.estimate.site.WeatherLibrary}, {@link org.plumbrow.estimate.site.UseBook} and
 * {@code YieldBook}. Rules: a file is kept as it came and read once; the calculation is in {@code calc.energy} and
 * {@code calc.finance}, nothing of it is repeated here.
 */
@NullMarked
@NamedInterface("site")
package org.plumbrow.estimate.site;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
