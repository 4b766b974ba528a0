/**
 * Web: what all pages share. Who is asking ({@link Access}), what a role may do ({@link May}), the layout with its
 * places ({@link Place}), words for dates and numbers ({@link Words}), the error pages and the security headers.
 * <p>Start at {@link Access} and {@code templates/web/layout.html}. Rules: roles in {@link May}, once.
 * Never knows a project, a crew or any other thing of a later room.
 */
@NullMarked
@ApplicationModule(
        displayName = "Web",
        allowedDependencies = {"database", "calc"})
package org.plumbrow.web;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
