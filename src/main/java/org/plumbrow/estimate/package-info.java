/**
 * Estimate: what a site uses, what its system will make, and what that is worth.
 * <p>Start at {@link Estimates} (the figures that other rooms read) and {@link EnergyInputs} (what they are computed from,
 * for whoever computes on); the pages of weather, use, size, yield and orientation are in {@code site}. Rules: every figure
 * names its weather and says when that was invented or made from monthly means; a result is kept with the hash of what it
 * was made from and never shown when that has changed. Asks {@link DesignedSystem}, which the design supplies, for the
 * system as it is drawn; until then the contract's counts. Never promises: a typical year is a middle year.
 */
@NullMarked
@ApplicationModule(
        displayName = "Estimate",
        allowedDependencies = {
            "database",
            "web",
            "branch",
            "evidence",
            "evidence :: table",
            "project",
            "survey",
            "project :: gate",
            "calc",
            "calc :: duration",
            "calc :: energy",
            "calc :: sun",
            "calc :: weather",
            "calc :: finance",
            "calc :: use"
        })
package org.plumbrow.estimate;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
