/** The pages of the gates: how a gate stands, answering an item, passing and going back, and the checklists of a branch. */
@NullMarked
package org.plumbrow.project.gate.page;

import org.jspecify.annotations.NullMarked;
