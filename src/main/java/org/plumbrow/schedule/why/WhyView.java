package org.plumbrow.schedule.why;

import java.util.List;
import java.util.Optional;
import org.plumbrow.project.ProjectFacts;

/**
 * Why an activity stands where it stands.
 *
 * @param heading the answer
 * @param key the activity's, within its project
 * @param title "Racking"
 * @param chain first cause first, the activity itself last; empty without a date
 * @param longest which link takes most of the time; empty where there is only one
 * @param cause what bound the first of them; without a chain when it was finished, if it was
 * @param clash what cannot hold together, a sentence each; empty where nothing clashes or it may not be seen
 * @param promised whether the promise that the activity decides can be kept; empty where it decides none
 * @param moving empty where it may not be seen or has nothing to compare
 */
record WhyView(
        ProjectFacts project,
        String heading,
        String key,
        String title,
        List<Link> chain,
        String longest,
        String cause,
        List<String> clash,
        Optional<Promised> promised,
        Optional<Moving> moving) {

    /** @param breaking a sentence for each other promise that breaks in the plan found @param proof what is proved and what is found */
    record Promised(String shape, String answer, List<String> breaking, String proof) {}

    /**
     * One link.
     *
     * @param what "Racking", with the project's name where it is another's
     * @param when "Mon, Mar 8 to Fri, Mar 12, Crew 1"
     * @param why what kept it from being earlier
     * @param from where its bar begins, in thousandths of the time from today to the date
     * @param length at least a sliver
     * @param waits drawn as waiting, not as work
     */
    record Link(String what, String when, String why, int from, int length, boolean waits) {}

    /** @param finish the date that all are compared with @param helps with a gain, largest first @param idle tried in vain */
    record Moving(String finish, List<Try> helps, List<Try> idle) {}

    /** @param what the relaxation as a clause @param date then @param gain "3 working days sooner" @param others what it does to promises */
    record Try(String what, String date, String gain, String others) {}
}
