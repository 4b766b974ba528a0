/**
 * The page of one project, with what other rooms add to it, and its journal. Start at {@code ProjectController}.
 */
@NullMarked
package org.plumbrow.project.show;

import org.jspecify.annotations.NullMarked;
