/** The firm as a whole: the first run, branches, security events. */
@NullMarked
package org.plumbrow.account.firm;

import org.jspecify.annotations.NullMarked;
