/**
 * What has to be done or waited for on a project, and what people recorded of it.
 * <p>Start at {@link org.plumbrow.schedule.activity.ActivityList} (derived from quantities and the branch's rates) and
 * {@link org.plumbrow.schedule.activity.Progress} (begun, done, answered) and
 * {@link org.plumbrow.schedule.activity.Moves} (a start settled, left to the plan, the last of these taken back). Rules:
 * what a person recorded survives every derivation; what the stage says is done is done.
 */
@NullMarked
@NamedInterface("activity")
package org.plumbrow.schedule.activity;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
