/**
 * Schedule: what is done when, by whom, and why not earlier.
 * <p>Start at {@code schedule.activity} (what a project needs done, and what people recorded of it), then
 * {@code schedule.plan} (a branch's plan: computed in the background into a draft, published by a manager), then the
 * pages: {@code schedule.lookahead}, {@code schedule.crewweek}. Other rooms read {@link org.plumbrow.schedule.PublishedPlan}.
 * Rules: crew weeks, feeds and customers see the published plan only; a draft may clash and says so, a published plan
 * cannot (the database refuses it). The arithmetic is {@link org.plumbrow.calc.planning}'s.
 * Tells others: {@link org.plumbrow.schedule.PlanPublished}. Never passes a gate.
 */
@NullMarked
@ApplicationModule(
        displayName = "Schedule",
        allowedDependencies = {
            "database",
            "web",
            "web :: link",
            "notice",
            "account",
            "branch",
            "branch :: days",
            "evidence",
            "project",
            "project :: gate",
            "design",
            "design :: draft",
            "crew",
            "permit",
            "calc",
            "calc :: calendar",
            "calc :: duration",
            "calc :: forecast",
            "calc :: planning",
            "calc :: relax",
            "calc :: replan",
            "calc :: causes",
            "calc :: search",
            "calc :: planning-engine"
        })
package org.plumbrow.schedule;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
