/** What hangs under a person's own name: branches, places, password, second factor, phones. */
@NullMarked
package org.plumbrow.account.own;

import org.jspecify.annotations.NullMarked;
