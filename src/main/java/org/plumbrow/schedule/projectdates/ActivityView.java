package org.plumbrow.schedule.projectdates;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.calc.duration.Explanation;
import org.plumbrow.schedule.activity.ActivityRow;
import org.plumbrow.schedule.plan.PlannedRow;

/**
 * An activity of a project as the page shows it.
 *
 * @param project its name
 * @param planned in the published plan; empty as long as it has no place there
 * @param draft in the draft, where it differs and may be seen
 * @param crew names of who does it; empty for nobody
 * @param duration "2.5 days", "15 working days"
 * @param explanation how the duration came about, for the crew that is booked
 */
record ActivityView(
        String project,
        ActivityRow row,
        String shape,
        String state,
        Optional<PlannedRow> planned,
        Optional<PlannedRow> draft,
        String crew,
        String duration,
        Explanation explanation) {

    public UUID id() {
        return row.id();
    }

    public String title() {
        return row.title();
    }

    /** Inputs of which a rule stands in for a count make the figure "about". */
    public boolean isAbout() {
        return explanation.isEstimate();
    }

    public List<String> sources() {
        return explanation.sources();
    }

    /** The bound's sentence; on the project's own page its name need not be said. */
    public String why() {
        String sentence = planned.map(PlannedRow::boundSentence).orElse("").replace(project + ", ", "");
        return sentence.isEmpty() ? "" : Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
    }
}
