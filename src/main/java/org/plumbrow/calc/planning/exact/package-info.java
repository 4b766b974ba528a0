/**
 * The constraint solver's part of the search: a piece of a plan, or all of it, as a CP-SAT model. What it answers is an
 * order and crews, from which the decoder makes the dates; what it proves about the whole is a bound. Beside it a linear
 * programme that mixes ways of doing jobs and so finds prices. The only package
 * that touches the native library. One worker and a limit of deterministic time give the same answer each time.
 */
@NullMarked
@NamedInterface("exact")
package org.plumbrow.calc.planning.exact;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
