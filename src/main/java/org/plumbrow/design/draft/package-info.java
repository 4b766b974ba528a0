/**
 * The draft of a design and its frozen revisions. Start at {@link org.plumbrow.design.draft.Designs} (reading),
 * {@link org.plumbrow.design.draft.DesignEditing} (parts) and {@link org.plumbrow.design.draft.Revisions}.
 */
@NullMarked
@NamedInterface("draft")
package org.plumbrow.design.draft;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
