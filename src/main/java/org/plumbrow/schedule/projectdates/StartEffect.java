package org.plumbrow.schedule.projectdates;

import java.util.List;
import org.plumbrow.schedule.plan.MovedProject;

/**
 * What a settled start would do.
 *
 * @param heading the answer: "Racking, Hatch Ridge, Tue, Mar 9, Crew 2: no promise breaks by it"
 * @param inShort how many dates move
 * @param promises that would stand otherwise, those that get worse first
 * @param same promises that stay as they are
 * @param moved projects with dates that move
 * @param findings what would not hold
 */
record StartEffect(
        String heading,
        String inShort,
        List<PromiseThen> promises,
        List<PromiseThen> same,
        List<MovedProject> moved,
        List<String> findings) {

    /** A promise now and then. @param wasDay, day of the milestone in the plan, as people write them */
    record PromiseThen(
            String project,
            String href,
            String milestone,
            String promised,
            String wasDay,
            String wasShape,
            String was,
            String day,
            String shape,
            String outlook) {}
}
