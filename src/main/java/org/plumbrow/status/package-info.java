/**
 * Status: the customer's page behind a private link, what is shared there, what the customer answers, and what they are
 * reminded of.
 * <p>Start at {@code page.CustomerPage} (what the customer reads), {@link org.plumbrow.status.CustomerSharing} (what is
 * shared) and {@link org.plumbrow.status.CustomerLinks} (who has a link); the branch's own page is {@code desk}. Rules:
 * nothing is shown because it is there, only because somebody chose it; dates are the published plan's and the booked
 * outage's; names and reasons of the customer stand in rows of their own, never in a journal line.
 * Hears {@link org.plumbrow.notice.NoticeNotSent} and tells the project manager. Never decides a date and never shows a
 * draft, a price, a remark or another project.
 */
@NullMarked
@ApplicationModule(
        displayName = "Status",
        allowedDependencies = {
            "database",
            "web",
            "web :: link",
            "notice",
            "account",
            "branch",
            "evidence",
            "project",
            "schedule",
            "cutover",
            "cutover :: daylog",
            "calc",
            "calc :: calendar",
            "calc :: duration"
        })
package org.plumbrow.status;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
