package org.plumbrow.calc.planning.relax;

import org.plumbrow.calc.calendar.HalfDay;

/**
 * What one relaxation does.
 *
 * @param finish of the activity asked about
 * @param daysGained working days of the branch as it works now; negative where the date gets later
 * @param promisesSaved that broke and now hold
 * @param promisesBroken that held and now break
 * @param latenessChange of all promises, in half-days times weight; negative is better
 */
public record Moved(
        Relaxation relaxation,
        HalfDay finish,
        int daysGained,
        int promisesSaved,
        int promisesBroken,
        long latenessChange) {}
