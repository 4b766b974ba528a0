/**
 * One project by itself, planned to end as early as possible: the planning engine's single-project mode, in which it is
 * held against published results (PSPLIB).
 *
 * <p>In: a {@link org.plumbrow.calc.planning.singleproject.SingleProject}, read from the library's text by
 * {@link org.plumbrow.calc.planning.singleproject.ProjectText}. Out: a
 * {@link org.plumbrow.calc.planning.singleproject.Timetable}, from
 * {@link org.plumbrow.calc.planning.singleproject.ListEvolution} (fast, good, without proof), every one of which
 * {@link org.plumbrow.calc.planning.singleproject.TimetableCheck} passes. Chance is counted: the same seed and number of
 * schedules give the same timetable.
 */
@NullMarked
@NamedInterface("singleproject")
package org.plumbrow.calc.planning.singleproject;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
