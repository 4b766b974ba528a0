package org.plumbrow.schedule.scenario;

import java.util.List;
import org.plumbrow.schedule.plan.ToTell;

/**
 * The plan as it stands, or a scenario, as a line of the comparison.
 *
 * @param what is otherwise in it, in words
 * @param halfDaysLate of all promises, weighted
 * @param jobsMoved with a date that moves within eight weeks
 * @param breaking promises that break or break by more, in words
 * @param mended promises that break as things stand and are kept here
 * @param toTell whom it concerns, and what changes for each
 */
record ScenarioView(
        String name,
        List<String> what,
        String href,
        long kept,
        long broken,
        long halfDaysLate,
        int jobsMoved,
        List<String> breaking,
        List<String> mended,
        List<ToTell> toTell) {

    /** Those whom it concerns at all. */
    public List<ToTell.Whom> whoms() {
        return toTell.stream().map(ToTell::whom).distinct().toList();
    }

    public List<ToTell> of(ToTell.Whom whom) {
        return toTell.stream().filter(one -> one.whom() == whom).toList();
    }

    public List<String> names(String whom) {
        return of(ToTell.Whom.valueOf(whom)).stream().map(ToTell::name).toList();
    }
}
