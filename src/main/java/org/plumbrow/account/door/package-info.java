/** Signing in and out: the security chain, the sign-in pages, and a form that outlived its session. */
@NullMarked
package org.plumbrow.account.door;

import org.jspecify.annotations.NullMarked;
