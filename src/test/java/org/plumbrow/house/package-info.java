/** The rules of the house and the proof that each of them can fail. */
@NullMarked
package org.plumbrow.house;

import org.jspecify.annotations.NullMarked;
