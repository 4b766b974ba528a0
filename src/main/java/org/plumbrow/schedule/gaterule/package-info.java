/** What the gates ask of the plan: is the promise plausible, is it kept, is somebody booked. */
@NullMarked
package org.plumbrow.schedule.gaterule;

import org.jspecify.annotations.NullMarked;
