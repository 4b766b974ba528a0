package org.plumbrow.schedule.plan;

import java.util.Optional;
import java.util.UUID;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.duration.ActivityCode;

/**
 * An activity in a plan, joined with what it is.
 *
 * @param finish its last half-day, included
 * @param boundKind what kept it from being earlier: a name of the core's {@code Bound}, in capitals
 * @param boundSentence the same as a sentence
 */
public record PlannedRow(
        UUID activityId,
        UUID projectId,
        String key,
        ActivityCode code,
        String words,
        int position,
        String equipment,
        boolean isDone,
        boolean isPinned,
        HalfDay start,
        HalfDay finish,
        Optional<UUID> crewId,
        String boundKind,
        Optional<UUID> boundActivityId,
        String boundSentence) {

    public boolean isWait() {
        return code.kind() == ActivityCode.Kind.WAIT;
    }

    /** "Modules, array 2". */
    public String title() {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    /** Whether it stands where the other one stood: same days, same crew. */
    public boolean standsAs(PlannedRow other) {
        return start.equals(other.start) && finish.equals(other.finish) && crewId.equals(other.crewId);
    }
}
