package org.plumbrow.calc.planning.exact;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The solver's variables of one free task. */
final class Moves {

    final int number;
    final IntVar start;
    /** The slot after its last one. */
    final IntVar end;
    /** A work's stay from start to end, for equipment and for crews taken together. */
    final @Nullable IntervalVar stay;

    final List<ByCrew> choices = new ArrayList<>();

    /** One crew that may do it. */
    record ByCrew(int crew, BoolVar taken, List<IntervalVar> runs) {}

    Moves(int number, IntVar start, IntVar end, @Nullable IntervalVar stay) {
        this.number = number;
        this.start = start;
        this.end = end;
        this.stay = stay;
    }
}
