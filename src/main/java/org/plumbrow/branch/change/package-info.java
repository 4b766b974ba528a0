/** The page of all settings, and the log of what was changed. */
@NullMarked
@NamedInterface("change")
package org.plumbrow.branch.change;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
