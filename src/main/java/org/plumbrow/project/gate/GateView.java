package org.plumbrow.project.gate;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.project.Stage;
import org.plumbrow.project.Standing;

/**
 * A gate of a project: every item that is asked of it, in the order of the checklist.
 *
 * @param reached what the project has reached; null for a new one
 * @param due the day on which the published plan needs the gate behind the project; null once it is, and without a plan
 * @param items those asked here; what is not asked of this site is left out
 */
public record GateView(
        UUID projectId,
        UUID branchId,
        Stage to,
        @Nullable Stage reached,
        Standing standing,
        @Nullable LocalDate due,
        List<ItemView> items) {

    public List<ItemView> missing() {
        return items.stream().filter(ItemView::isMissing).toList();
    }

    public boolean isOpen() {
        return items.stream().noneMatch(ItemView::isMissing);
    }

    public boolean isNext() {
        return to.isNextAfter(reached);
    }

    public boolean isPassed() {
        return to.isReachedAt(reached);
    }

    /** @throws IllegalArgumentException if it is not asked here */
    public ItemView item(String code) {
        return items.stream()
                .filter(item -> item.code().equals(code))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(code + " is not asked of this project"));
    }
}
