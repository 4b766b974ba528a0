package org.plumbrow.calc.planning.relax;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.planning.Activity;
import org.plumbrow.calc.planning.Fix;
import org.plumbrow.calc.planning.Guidance;
import org.plumbrow.calc.planning.Placement;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.PlanningProblem;

/** Who is served first, and by whom: as in a known plan, but for what a relaxation is about. */
final class Sequence {

    private final Plan known;
    private final List<Activity> free;
    /** The known start of each project's first free work. */
    private final Map<String, HalfDay> first;

    Sequence(PlanningProblem problem, Plan known) {
        this.known = known;
        free = problem.activities().stream()
                .filter(activity -> activity.fix() instanceof Fix.Free
                        && known.of(activity.id()).isPresent())
                .toList();
        first = free.stream().collect(Collectors.toMap(Activity::projectId, this::start, Sequence::earlier));
    }

    Guidance asKnown() {
        return guidance(Comparator.comparing(this::start), Optional.empty());
    }

    /** A project served before another takes its place from that one's first work on; who got help may share its work. */
    Guidance under(Relaxation relaxation) {
        if (relaxation instanceof Relaxation.ServedBefore swap) {
            return guidance(
                    Comparator.<Activity, HalfDay>comparing(activity -> startWith(swap, activity))
                            .thenComparing(activity -> !activity.projectId().equals(swap.projectId()))
                            .thenComparing(this::start),
                    Optional.empty());
        }
        Optional<String> helped =
                relaxation instanceof Relaxation.CrewLike more ? Optional.of(more.crewId()) : Optional.empty();
        return guidance(Comparator.comparing(this::start), helped);
    }

    private HalfDay startWith(Relaxation.ServedBefore swap, Activity activity) {
        HalfDay own = start(activity);
        return activity.projectId().equals(swap.projectId())
                ? earlier(own, first.getOrDefault(swap.otherProjectId(), own))
                : own;
    }

    private HalfDay start(Activity activity) {
        return known.of(activity.id()).map(Placement::start).orElseThrow();
    }

    private Guidance guidance(Comparator<Activity> served, Optional<String> anyInsteadOf) {
        List<Activity> inTurn = free.stream().sorted(served).toList();
        Map<String, Guidance.Guide> guides = new HashMap<>();
        for (int rank = 0; rank < inTurn.size(); rank++) {
            String id = inTurn.get(rank).id();
            Optional<String> crew = known.of(id)
                    .flatMap(Placement::crewId)
                    .filter(who -> anyInsteadOf.filter(who::equals).isEmpty());
            guides.put(id, new Guidance.Guide(rank, crew, Optional.empty()));
        }
        return new Guidance(guides);
    }

    private static HalfDay earlier(HalfDay one, HalfDay other) {
        return other.isBefore(one) ? other : one;
    }
}
