/** Parts of a design: fields said once by {@link org.plumbrow.design.part.Col}, rows as written, the form that reads them. */
@NullMarked
@NamedInterface("part")
package org.plumbrow.design.part;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
