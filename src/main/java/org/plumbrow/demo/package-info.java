/**
 * Demo: the made-up branch of {@code demo-seed/}, loaded into an empty database through the services that people use.
 * <p>Start at {@code DemoLoader}. Rules: all of it or nothing, before the first page is served; every date counts from the
 * day of the first start; pictures are drawn here and say "made up". Not there with {@code plumbrow.demo=false}.
 */
@NullMarked
@ApplicationModule(
        displayName = "Demo",
        allowedDependencies = {
            "database",
            "web",
            "account",
            "branch",
            "branch :: place",
            "branch :: utility",
            "branch :: office",
            "branch :: weather",
            "evidence",
            "project",
            "project :: gate",
            "survey",
            "design",
            "design :: draft",
            "design :: part",
            "crew",
            "permit",
            "schedule",
            "schedule :: crewweek",
            "estimate :: site",
            "estimate :: place",
            "estimate :: guarantee",
            "estimate :: savings",
            "cutover",
            "cutover :: daylog",
            "cutover :: ridethrough",
            "status",
            "calc",
            "calc :: calendar",
            "calc :: duration",
            "calc :: electrical",
            "calc :: finance",
            "calc :: sun",
            "calc :: weather"
        })
package org.plumbrow.demo;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
