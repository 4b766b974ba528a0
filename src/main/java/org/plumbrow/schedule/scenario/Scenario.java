package org.plumbrow.schedule.scenario;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.branch.Written;
import org.springframework.web.util.UriComponentsBuilder;

/**
 * A named copy of the plan.
 *
 * @param changes what is otherwise, in the order in which it was thought of; none yet in a new one
 */
record Scenario(UUID id, UUID branchId, long version, String name, List<Change> changes, String madeBy) {

    /** One thing that is otherwise. */
    record Change(UUID id, ScenarioTerms terms) {

        boolean isJob() {
            return terms.kind() == ScenarioKind.NEW_JOB;
        }

        /** Where a project is opened with what is known of this job. */
        public String asProject() {
            return UriComponentsBuilder.fromPath("/projects/new")
                    .queryParam("kwDc", terms.kwDc() == null ? "" : terms.kwDc().toPlainString())
                    .queryParam(
                            "mounting",
                            terms.mounting() == null ? "" : terms.mounting().name())
                    .build()
                    .toString();
        }
    }

    List<Written> written() {
        return List.of(Written.of("Name", "name", name));
    }

    /** Why nothing of it can be accepted; empty when something can be recorded. */
    Optional<String> notToAccept() {
        if (changes.isEmpty()) {
            return Optional.of("Nothing is otherwise in it yet. Add what is, then look again.");
        }
        return changes.stream().allMatch(Change::isJob)
                ? Optional.of(
                        "A job is not accepted here: it comes into the plan when its project is opened and signed.")
                : Optional.empty();
    }

    /** What becomes a project first. */
    public List<Change> jobs() {
        return changes.stream().filter(Change::isJob).toList();
    }
}
