/**
 * Permit: everything that a project waits for: permits, the utility's papers, locate tickets, deliveries, inspections.
 * <p>Start at {@link org.plumbrow.permit.AwaitedBook} (what is awaited, and its changes) and {@code LeadTimes} (learned from
 * what came). Rules: each change leaves a journal line in its transaction; a question asked again is a row of its own; a
 * locate counts only when it is clear and has an expiry.
 * Tells others: {@link org.plumbrow.permit.WaitMoved}, from which the plan takes what was asked for, promised and came.
 * Never passes a gate and never says that it is safe to dig: that stays with whoever looks at the marks.
 */
@NullMarked
@ApplicationModule(
        displayName = "Permit",
        allowedDependencies = {
            "database",
            "web",
            "notice",
            "account",
            "branch",
            "evidence",
            "project",
            "project :: gate",
            "calc",
            "calc :: calendar",
            "calc :: duration",
            "calc :: leadtime"
        })
package org.plumbrow.permit;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
