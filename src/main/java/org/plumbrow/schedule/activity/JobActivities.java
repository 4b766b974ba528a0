package org.plumbrow.schedule.activity;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.calc.duration.ProjectActivity;
import org.plumbrow.project.ProjectFacts;

/**
 * A project with all that has to be done on it, in the order of the work.
 *
 * @param items empty as long as the contract names no array
 */
public record JobActivities(ProjectFacts project, List<Item> items) {

    /**
     * An activity: how it is derived, and what is stored of it.
     *
     * @param byCrew for crews that have learned a pace of their own
     */
    public record Item(ProjectActivity derived, ActivityRow row, Map<UUID, ProjectActivity> byCrew) {

        public Item {
            byCrew = Map.copyOf(byCrew);
        }

        /** As that crew does it. */
        public ProjectActivity derivedFor(UUID crewId) {
            return byCrew.getOrDefault(crewId, derived);
        }
    }

    public JobActivities {
        items = List.copyOf(items);
    }

    public Optional<Item> item(String key) {
        return items.stream().filter(item -> item.row().key().equals(key)).findFirst();
    }

    public List<ProjectActivity> derived() {
        return items.stream().map(Item::derived).toList();
    }
}
