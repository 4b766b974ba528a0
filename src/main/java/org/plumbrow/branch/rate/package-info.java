/** The branch's own rates of work, fixed times and waits. */
@NullMarked
@NamedInterface("rate")
package org.plumbrow.branch.rate;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
