package org.plumbrow.cutover;

import java.time.Instant;
import java.util.UUID;
import org.plumbrow.cutover.OutageFacts.Told;
import org.plumbrow.database.Ids;
import org.plumbrow.project.Journal;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.web.Actor;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * Windows that were agreed outside the program: utility and customer have been told and have answered. The caller has
 * asked for access. Which days fit is not judged again: they are agreed.
 */
@Service
@Transactional(propagation = Propagation.MANDATORY)
public class OutageHistory {

    private final Projects projects;
    private final OutageWindows windows;
    private final PlannedDay planned;
    private final Journal journal;

    OutageHistory(Projects projects, OutageWindows windows, PlannedDay planned, Journal journal) {
        this.projects = projects;
        this.windows = windows;
        this.planned = planned;
        this.journal = journal;
    }

    /** @param told when both were told; both answered then @param confirmation the utility's number */
    public UUID agreed(UUID projectId, OutageChoice choice, Instant told, String confirmation, Actor by) {
        ProjectFacts project = projects.factsUnchecked(projectId);
        OutageWindow window =
                OutageWindow.hold(Ids.next(), project.branchId(), projectId, choice.plan(), by.name(), told);
        window.book();
        window.tellUtility(new Told(told, "by letter"));
        window.tellCustomer(new Told(told, "by telephone"));
        window.utilityConfirms(confirmation, told);
        window.customerAnswers(true, "", project.customer(), told);
        windows.saveAndFlush(window);
        planned.isTold(project, window.facts(), by);
        journal.append(
                JournalEvent.of(
                        projectId,
                        "outage.booked",
                        "Outage agreed with utility and customer: " + choice.day() + ", " + choice.start() + ", "
                                + choice.outageMinutes() + " min. The utility's number is " + confirmation + "."),
                by,
                told);
        return window.id();
    }
}
