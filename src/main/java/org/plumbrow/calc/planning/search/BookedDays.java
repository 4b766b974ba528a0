package org.plumbrow.calc.planning.search;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.plumbrow.calc.planning.Activity;
import org.plumbrow.calc.planning.Crew;
import org.plumbrow.calc.planning.Equipment;
import org.plumbrow.calc.planning.EquipmentNeed;
import org.plumbrow.calc.planning.Fix;
import org.plumbrow.calc.planning.Placement;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.PlanningProblem;

/** Crews and equipment with all that is settled booked. */
final class BookedDays {

    private final PlanningProblem problem;
    private final Slots slots;
    private final CrewDays[] crews;
    private final Pool[] pools;
    private final Map<String, Integer> crewNumbers = new HashMap<>();

    BookedDays(PlanningProblem problem, Plan first, Slots slots) {
        this.problem = problem;
        this.slots = slots;
        List<Crew> people = problem.crews();
        crews = people.stream().map(crew -> new CrewDays(crew, slots)).toArray(CrewDays[]::new);
        IntStream.range(0, crews.length)
                .forEach(number -> crewNumbers.put(people.get(number).id(), number));
        pools = problem.equipment().stream().map(kind -> new Pool(kind, slots)).toArray(Pool[]::new);
        for (Activity activity : problem.activities()) {
            boolean settled = !(activity.fix() instanceof Fix.Free) && !(activity.fix() instanceof Fix.Done);
            if (settled) {
                first.of(activity.id()).ifPresent(placement -> book(activity, placement));
            }
        }
    }

    CrewDays[] crews() {
        return crews;
    }

    Pool[] pools() {
        return pools;
    }

    /** Only what a crew does holds crew and equipment. */
    private void book(Activity activity, Placement placement) {
        if (placement.crewId().isEmpty()) {
            return;
        }
        CrewDays crew = crews[crewNumbers.get(placement.crewId().get())];
        int from = slots.axis.atOrAfter(placement.start());
        int to = slots.axis.atOrBefore(placement.finish());
        int last = crew.indexAtOrAfter[to];
        for (int index = crew.indexAtOrAfter[from]; index <= last; index++) {
            crew.taken[index >> 6] |= 1L << (index & 63);
        }
        for (EquipmentNeed need : activity.equipment()) {
            for (int pool = 0; pool < pools.length; pool++) {
                if (isOf(pools[pool].equipment, need)) {
                    pools[pool].take(from, to, need.count());
                }
            }
        }
    }

    private static boolean isOf(Equipment kind, EquipmentNeed need) {
        return kind.id().equals(need.equipmentId());
    }
}
