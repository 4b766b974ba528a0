package org.plumbrow.project;

import org.plumbrow.web.May;

/**
 * A page of a project, as a link under its title block; each room contributes its own as beans.
 *
 * @param order ascending, in the order of the stages: survey 100, design 200, waits 300, schedule 400, cutover 500,
 *     commissioning 600, production 700, papers 800, journal 900
 * @param key message key of its name
 * @param suffix what follows {@code /projects/{id}}: {@code /journal}
 * @param act who sees it
 */
public record ProjectPage(int order, String key, String suffix, May act) {}
