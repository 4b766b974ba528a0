package org.plumbrow.project;

import java.util.Optional;

/**
 * A section of the project's page; each room contributes its own as beans. Its fragment is a {@code <section>} with an
 * {@code <h2>} and gets the model as its one argument.
 */
public interface ProjectPanel {

    /** Ascending; dates 100, outage 200, waits 300, papers 800, journal 900. */
    int order();

    /** What it shows of this project to the person who asks; empty for nothing. */
    Optional<Shown> show(ProjectFacts project);

    /**
     * @param template {@code schedule/panel}
     * @param fragment {@code dates}: called with the model
     */
    record Shown(String template, String fragment, Object model) {}
}
