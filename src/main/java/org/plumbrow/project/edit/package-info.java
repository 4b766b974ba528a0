/**
 * Changing a project: a form for each part, each under its own version, and undoing. Start at {@code SitePage} (all
 * others go the same way) and {@code web.Entered} (how typed text becomes figures). Rules: a form holds only text, so that
 * nothing typed is ever lost; limits come from {@code ProjectLimits}; undoing is the opposite act as a new change.
 */
@NullMarked
package org.plumbrow.project.edit;

import org.jspecify.annotations.NullMarked;
