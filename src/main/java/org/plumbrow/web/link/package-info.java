/**
 * Private links: pages that open without an account, for whoever holds the address.
 * <p>Start at {@link org.plumbrow.web.link.PrivateLinks}. Rules: a link is 160 bits made from a row's id and version by
 * HMAC, so that it can be repeated and no row holds it; a new one ends the old; unknown, ended and revoked are alike.
 * Whether somebody may make or end a link, the room that owns the page decides.
 */
@NullMarked
@NamedInterface("link")
package org.plumbrow.web.link;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
