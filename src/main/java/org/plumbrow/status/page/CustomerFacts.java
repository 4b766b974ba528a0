package org.plumbrow.status.page;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.plumbrow.cutover.OutageFacts;
import org.plumbrow.cutover.daylog.DayStory;
import org.plumbrow.evidence.EvidenceFacts;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Stage;
import org.plumbrow.schedule.PlannedDates;
import org.plumbrow.status.CustomerTerms;
import org.plumbrow.status.DutyPhones;

/**
 * All that the customer's page is made from, at one moment. Not all of it is shown: what is, {@link CustomerView} says.
 *
 * @param windows newest first
 * @param plan the published one's, in the order of the work
 * @param day what the log of today's outage tells; empty on any other day
 */
record CustomerFacts(
        ProjectFacts project,
        String branchName,
        ZoneId zone,
        Instant now,
        Map<Stage, LocalDate> reached,
        List<PlannedDates> plan,
        List<OutageFacts> windows,
        CustomerTerms terms,
        List<Shown> papers,
        boolean hasShutOffPhoto,
        List<DutyPhones.Reached> people,
        Optional<DayStory> day) {

    /** A shared paper that is there to be opened. */
    record Shown(int slot, String title, EvidenceFacts evidence) {}

    LocalDate today() {
        return LocalDate.ofInstant(now, zone);
    }

    Situation situation() {
        return Situation.of(project, windows, now, zone);
    }

    Ahead ahead() {
        return project.standing() == org.plumbrow.project.Standing.OPEN
                ? Ahead.of(plan, Situation.announced(windows), today())
                : Ahead.NOTHING;
    }
}
