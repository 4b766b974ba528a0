/**
 * The list of projects: finding, filtering, sorting, paging, taking it out as CSV. Start at {@code ProjectList}.
 * Rules: the state of the list is its address; one query reads a page and one counts, however many projects there are.
 */
@NullMarked
package org.plumbrow.project.list;

import org.jspecify.annotations.NullMarked;
