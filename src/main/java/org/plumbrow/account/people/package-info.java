/** The people of a branch: invitations, roles, the end of a membership, and passwords by link. */
@NullMarked
package org.plumbrow.account.people;

import org.jspecify.annotations.NullMarked;
