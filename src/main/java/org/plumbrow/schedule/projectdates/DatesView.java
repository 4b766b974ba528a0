package org.plumbrow.schedule.projectdates;

import java.util.List;
import java.util.Optional;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.schedule.forecast.MilestoneForecast;
import org.plumbrow.schedule.plan.PlanHead;
import org.plumbrow.schedule.plan.PlannedPromise;
import org.plumbrow.schedule.plan.PlannedRow;

/**
 * The dates of a project.
 *
 * @param heading the answer: when it is on, and whether the promise holds
 * @param published the plan whose dates these are; empty before the first
 * @param draft a draft that moves a date of this project
 * @param forecasts of the milestones still ahead, in the order of the work
 * @param followed of them the promised one, else system on
 * @param binding why the promised date is what it is, first cause first
 * @param cause the same as a sentence
 */
record DatesView(
        ProjectFacts project,
        String heading,
        List<ActivityView> activities,
        Optional<PlanHead> published,
        Optional<PlanHead> draft,
        Optional<PlannedPromise> promise,
        List<MilestoneForecast> forecasts,
        Optional<MilestoneForecast> followed,
        List<Link> binding,
        String cause) {

    /** "System on: even chance Mon, Apr 12, four in five Tue, Apr 20; the promise is kept in 72 of 100 runs." */
    public String likely() {
        return followed.map(DatesWords::likely).orElse("");
    }

    /** What the promised date waits for last. */
    public String boundKey() {
        return binding.get(binding.size() - 1).key();
    }

    /** A link of the chain. @param who crew or kind of wait @param finish its last day, as people write it */
    record Link(String key, String words, String finish) {
        static Link of(PlannedRow row, String who, String finish) {
            return new Link(row.key(), who.isEmpty() ? row.words() : row.words() + ", " + who, finish);
        }
    }
}
