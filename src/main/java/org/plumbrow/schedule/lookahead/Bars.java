package org.plumbrow.schedule.lookahead;

import java.util.List;
import org.plumbrow.schedule.plan.PlannedRow;

/** How the work of one crew or machine is cut into bars. */
interface Bars {
    List<Lanes.Piece> of(List<PlannedRow> booked);
}
