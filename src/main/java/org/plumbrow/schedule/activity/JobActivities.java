package org.plumbrow.schedule.activity;

import java.util.List;
import java.util.Optional;
import org.plumbrow.calc.duration.ProjectActivity;
import org.plumbrow.project.ProjectFacts;

/**
 * A project with all that has to be done on it, in the order of the work.
 *
 * @param items empty as long as the contract names no array
 */
public record JobActivities(ProjectFacts project, List<Item> items) {

    /** An activity: how it is derived, and what is stored of it. */
    public record Item(ProjectActivity derived, ActivityRow row) {}

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
