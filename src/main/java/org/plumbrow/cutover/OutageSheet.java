package org.plumbrow.cutover;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.outage.WindowSearch.Candidate;
import org.plumbrow.calc.outage.WindowSearch.Windows;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectTitle;

/**
 * Everything on the page of a project's outage.
 *
 * @param windows null as long as the site names no utility
 * @param live the window that is to come; null without one
 * @param crewName of the live window
 * @param past windows that are over, newest first
 */
record OutageSheet(
        ProjectTitle title,
        ProjectFacts project,
        WindowFinder.Asking asking,
        @Nullable Windows windows,
        @Nullable OutageFacts live,
        String crewName,
        List<OutageFacts> past,
        boolean mayBook,
        boolean mayRun) {

    /** The window that fits best; null when none does. */
    public @Nullable Candidate bestWindow() {
        return windows == null || windows.best().isEmpty()
                ? null
                : windows.best().get(0);
    }

    /** The outage that took place, when no other one is to come; else null. */
    public @Nullable OutageFacts done() {
        return live != null
                ? null
                : past.stream()
                        .filter(window -> window.state() == OutageState.DONE)
                        .findFirst()
                        .orElse(null);
    }

    /** What the page says first, as the key of the sentence. */
    public String headline() {
        if (live != null) {
            return live.powerOffAt() != null && live.powerOnAt() == null ? "off" : "live";
        }
        if (done() != null) {
            return "done";
        }
        if (windows == null) {
            return "noutility";
        }
        return windows.best().isEmpty() ? "none" : "best";
    }

    /** What is still to be done before the live window's day, most urgent first. */
    public List<String> open() {
        return live == null ? List.of() : OutageReadiness.open(live);
    }
}
