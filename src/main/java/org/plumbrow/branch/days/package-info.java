/** Working days and hours of a branch, and the days on which the branch or one of its utilities is closed. */
@NullMarked
@NamedInterface("days")
package org.plumbrow.branch.days;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
