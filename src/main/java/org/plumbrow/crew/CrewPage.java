package org.plumbrow.crew;

/**
 * A page that a later room keeps of each crew; contributed as a bean and linked from the crew's own page and the list.
 *
 * @param order ascending
 * @param key message key of its name
 * @param suffix behind the crew's address: "/week"
 */
public record CrewPage(int order, String key, String suffix) {}
