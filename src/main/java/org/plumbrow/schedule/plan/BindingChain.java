package org.plumbrow.schedule.plan;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/**
 * Why a date is what it is: from the activity back through what had to be finished first, to what bound the first of
 * them (a crew, a machine, a date, today).
 *
 * @param links first cause first, the activity itself last; none of them was done before the plan began
 */
public record BindingChain(List<PlannedRow> links) {

    private static final Set<String> WITHIN = Set.of("AFTER");
    private static final Set<String> ACROSS = Set.of("AFTER", "CREW_BUSY", "EQUIPMENT_BUSY");

    /** Within the project: what had to be finished first. */
    public static BindingChain of(Map<UUID, PlannedRow> rows, UUID activityId) {
        return of(rows, activityId, WITHIN);
    }

    /** Across the branch: also through the other works for which a crew or a machine was busy. */
    public static BindingChain across(Map<UUID, PlannedRow> rows, UUID activityId) {
        return of(rows, activityId, ACROSS);
    }

    private static BindingChain of(Map<UUID, PlannedRow> rows, UUID activityId, Set<String> followed) {
        Deque<PlannedRow> chain = new ArrayDeque<>();
        Set<UUID> seen = new HashSet<>();
        Optional<PlannedRow> at = Optional.ofNullable(rows.get(activityId));
        while (at.isPresent() && !at.get().isDone() && seen.add(at.get().activityId())) {
            PlannedRow link = at.get();
            chain.addFirst(link);
            at = followed.contains(link.boundKind()) ? link.boundActivityId().map(rows::get) : Optional.empty();
        }
        return new BindingChain(new ArrayList<>(chain));
    }

    /** "Posts: the post driver is away until Fri, Mar 19 (lent out)." Empty for an empty chain. */
    public String cause() {
        if (links.isEmpty()) {
            return "";
        }
        PlannedRow first = links.get(0);
        if (first.boundKind().equals("TODAY")) {
            return "What is left takes until then, beginning with " + first.words() + ".";
        }
        return first.title() + ": " + first.boundSentence();
    }
}
