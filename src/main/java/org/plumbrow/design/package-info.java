/**
 * Design: what is built, from what and how it is wired, drawn from the survey and checked as a plan reviewer does.
 * <p>Start at {@link org.plumbrow.design.DesignFacts}: the whole content of a design, which checks, drawings and
 * quantities read. Rules: a frozen revision is never changed; a drawing says nothing that the data do not; results about
 * electrical work and structures are planning aids. Never passes a gate and never designs a structure.
 */
@NullMarked
@ApplicationModule(
        displayName = "Design",
        allowedDependencies = {
            "database",
            "web",
            "branch",
            "evidence",
            "evidence :: pdf",
            "evidence :: table",
            "project",
            "survey",
            "estimate",
            "project :: gate",
            "calc",
            "calc :: calendar",
            "calc :: duration",
            "calc :: electrical",
            "calc :: energy",
            "calc :: sun"
        })
package org.plumbrow.design;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
