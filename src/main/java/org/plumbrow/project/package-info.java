/**
 * Project: one solar job with its customer, site, contract, people in charge, promises, stage and standing; its
 * journal, its place in the list, and the gates between its stages ({@code project.gate}).
 * <p>Start at {@link Projects} (what a project is), {@link ProjectRegister} (how one begins), {@link ProjectStages}
 * (how it moves) and {@link Journal} (what happened). Rules: every change appends a journal line in its own
 * transaction; a promise is added, never overwritten; the customer's data stand in rows of their own, never in a line.
 * Tells others: {@link ProjectChanged}, and each {@link JournalEvent}. Later rooms add pages ({@link ProjectPage}),
 * sections ({@link ProjectPanel}) and their share of the list ({@link ProjectOutlook}).
 * Never computes a date and never asks a later room except through an interface declared here.
 */
@NullMarked
@ApplicationModule(
        displayName = "Project",
        allowedDependencies = {
            "database",
            "web",
            "account",
            "branch",
            "evidence",
            "evidence :: table",
            "calc",
            "calc :: calendar",
            "calc :: duration"
        })
package org.plumbrow.project;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
