package org.plumbrow.cutover;

import org.plumbrow.calc.outage.OutageMinutes;
import org.plumbrow.calc.outage.OutageWork;
import org.plumbrow.project.ProjectFacts;
import org.springframework.stereotype.Component;

/** The expected minutes without power of one project: from its site and from what the cutover's own page adds. */
@Component
public class OutageMinutesOfProject {

    private final OutageWorkRows rows;

    OutageMinutesOfProject(OutageWorkRows rows) {
        this.rows = rows;
    }

    /** @param threePhase as read on the day; the site's own word may be older */
    public OutageMinutes of(ProjectFacts project, boolean threePhase) {
        return OutageMinutes.of(work(project, threePhase));
    }

    OutageWork work(ProjectFacts project, boolean threePhase) {
        WorkContent content = rows.of(project.id());
        return new OutageWork(
                project.site().supplySideTap(),
                content.mainPanel(),
                content.meterBase(),
                content.newTransformer(),
                content.currentTransformers(),
                content.meters(),
                project.site().generator(),
                threePhase,
                content.oldGear());
    }
}
