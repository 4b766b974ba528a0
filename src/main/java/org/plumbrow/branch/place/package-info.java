/** Name, zone, yard and travel of a branch; further branches of the firm. */
@NullMarked
@NamedInterface("place")
package org.plumbrow.branch.place;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
