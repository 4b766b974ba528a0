/** A design held against the rules: start at {@link org.plumbrow.design.check.DesignChecks}. */
@NullMarked
package org.plumbrow.design.check;

import org.jspecify.annotations.NullMarked;
