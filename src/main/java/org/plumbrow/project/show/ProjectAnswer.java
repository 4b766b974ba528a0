package org.plumbrow.project.show;

import java.util.Optional;
import org.plumbrow.project.NextGate;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectTitle;
import org.plumbrow.project.Stage;
import org.plumbrow.project.Standing;

/** What a project's page answers first: its sentence. */
final class ProjectAnswer {

    private ProjectAnswer() {}

    /** @param planned the planned day in words */
    static String sentence(ProjectFacts project, ProjectTitle title, Optional<NextGate.View> gate, String planned) {
        return project.name() + ": " + rest(project, title, gate, planned);
    }

    private static String rest(ProjectFacts project, ProjectTitle title, Optional<NextGate.View> gate, String planned) {
        if (project.standing() != Standing.OPEN) {
            return lower(project.standing().words());
        }
        if (title.forecastShape().equals("trouble")) {
            return "the promise breaks, planned for " + planned;
        }
        return gate.map(ProjectAnswer::missing).orElse("commissioned");
    }

    private static String missing(NextGate.View gate) {
        String to = lower(gate.to().words());
        int missing = gate.missing().size();
        if (missing == 0) {
            return "the gate to " + to + " can be passed";
        }
        return (missing == 1 ? "one item" : missing + " items") + " of " + gate.items() + " missing for " + to;
    }

    private static String lower(String words) {
        return words.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + words.substring(1);
    }

    /** A post of the row: driven, next or a peg. */
    record Post(Stage stage, String css, String when) {}
}
