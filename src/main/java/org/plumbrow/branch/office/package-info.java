/** Permit offices: code edition and waits of their own. */
@NullMarked
@NamedInterface("office")
package org.plumbrow.branch.office;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
