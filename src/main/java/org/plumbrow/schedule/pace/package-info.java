/**
 * What the branch has learned of its own pace: the table, the finished work, and what both make of it together.
 * <p>Start at {@code PaceReading}. Rules: only shown here; the work is recorded by {@code schedule.activity} and reported by
 * {@code schedule.crewweek}, and the sum is {@link org.plumbrow.calc.duration.PaceLearning}'s.
 */
@NullMarked
package org.plumbrow.schedule.pace;

import org.jspecify.annotations.NullMarked;
