/**
 * Cutover: the hours in which the utility takes the power away, and the day on which it happens.
 *
 * <p>Start at {@code OutagePlanning} (which window, who is told), {@code ridethrough.SiteLoads} (what
 * on the site suffers without power, and how long it stands) and {@code daylog.DayLogBook} (minute by minute).
 * Rules: which days fit in {@link org.plumbrow.calc.outage.WindowSearch}, when a hold point opens in
 * {@code daylog.HoldRules}. Tells others through the project's journal. Never decides that equipment may be touched.
 */
@NullMarked
@ApplicationModule(
        displayName = "Cutover",
        allowedDependencies = {
            "database",
            "web",
            "web :: link",
            "notice",
            "branch",
            "evidence",
            "evidence :: pdf",
            "project",
            "project :: gate",
            "estimate",
            "design",
            "design :: part",
            "design :: draft",
            "survey",
            "crew",
            "permit",
            "schedule",
            "schedule :: activity",
            "calc",
            "calc :: outage",
            "calc :: ranking",
            "calc :: ridethrough",
            "calc :: house",
            "calc :: sun",
            "calc :: energy",
            "calc :: weather",
            "calc :: electrical",
            "calc :: calendar",
            "calc :: duration"
        })
package org.plumbrow.cutover;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
