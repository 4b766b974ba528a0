/**
 * Which date can be promised to a customer who signs today: a few figures in, even chance and four in five out, and what
 * the new job does to the promises already made. Start at {@code WhichDate}. Nothing is stored.
 */
@NullMarked
package org.plumbrow.schedule.whichdate;

import org.jspecify.annotations.NullMarked;
