/**
 * The page that a customer reads: no account, no cookie, no script.
 * <p>Start at {@code CustomerPage}; what stands on top is {@code Situation}'s to say, what comes next {@code Ahead}'s.
 * Every sentence is keyed in {@code messages/status.properties}, at most at the reading level of grade 7.
 */
@NullMarked
package org.plumbrow.status.page;

import org.jspecify.annotations.NullMarked;
