/**
 * The plan of a branch: which crew and equipment does which activity when, and what bound each date.
 *
 * <p>In: a {@link org.plumbrow.calc.planning.PlanningProblem} (activities, crews, equipment, calendar, promises). Out: a
 * {@link org.plumbrow.calc.planning.Plan}. Start at {@link org.plumbrow.calc.planning.SerialPlanner}, the first engine;
 * a later engine keeps these records. Every plan, whoever made it, is held against
 * {@link org.plumbrow.calc.planning.PlanCheck}; {@link org.plumbrow.calc.planning.LookAhead} reads idle days and double
 * bookings out of it. Never asks a clock, never draws a random number.
 */
@NullMarked
@NamedInterface("planning")
package org.plumbrow.calc.planning;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
