package org.plumbrow.schedule.plan;

import java.util.Set;
import org.plumbrow.calc.duration.ActivityCode;

/** Activities whose date a customer lives by: when people come, when the power goes off, when the system is on. */
final class CustomerDatesTable {

    static final Set<ActivityCode> CODES = Set.of(
            ActivityCode.SITE_START,
            ActivityCode.FOUNDATION,
            ActivityCode.CUTOVER,
            ActivityCode.COMMISSIONING,
            ActivityCode.HAND_OVER);

    /** A customer is told of any day within so many weeks; of a later one only when it was settled with them or a promise breaks. */
    static final int WEEKS_TOLD = 4;

    private CustomerDatesTable() {}
}
