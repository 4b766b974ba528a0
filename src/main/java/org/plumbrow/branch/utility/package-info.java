/** Utilities: notice, appointment days and hours, who must be there. */
@NullMarked
@NamedInterface("utility")
package org.plumbrow.branch.utility;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
