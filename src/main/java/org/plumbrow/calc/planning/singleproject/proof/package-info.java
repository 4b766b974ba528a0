/**
 * How short one project can be at all, by the constraint solver (OR-Tools CP-SAT). Start at
 * {@link org.plumbrow.calc.planning.singleproject.proof.MakespanProof}: it takes a timetable that is known, looks for
 * shorter ones by {@link org.plumbrow.calc.planning.singleproject.ListEvolution} and beside it raises a lower bound by the
 * solver. It stops by the clock and on three threads, so unlike the search before it two
 * runs may differ; every bound that it states holds.
 */
@NullMarked
@NamedInterface("proof")
package org.plumbrow.calc.planning.singleproject.proof;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
