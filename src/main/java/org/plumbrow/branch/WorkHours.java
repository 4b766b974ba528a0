package org.plumbrow.branch;

import java.time.Duration;
import java.time.LocalTime;

/** The two halves of a working day on site, in the branch's time. */
public record WorkHours(
        LocalTime morningStart, LocalTime morningEnd, LocalTime afternoonStart, LocalTime afternoonEnd) {

    /** What a new branch starts with. */
    public static final WorkHours USUAL =
            new WorkHours(LocalTime.of(7, 0), LocalTime.NOON, LocalTime.of(12, 30), LocalTime.of(17, 0));

    public WorkHours {
        if (!morningStart.isBefore(morningEnd)
                || afternoonStart.isBefore(morningEnd)
                || !afternoonStart.isBefore(afternoonEnd)) {
            throw new IllegalArgumentException("working hours are not in order: " + morningStart + " to " + morningEnd
                    + ", " + afternoonStart + " to " + afternoonEnd);
        }
    }

    public int minutesOnSite() {
        return (int) Duration.between(morningStart, morningEnd)
                .plus(Duration.between(afternoonStart, afternoonEnd))
                .toMinutes();
    }
}
