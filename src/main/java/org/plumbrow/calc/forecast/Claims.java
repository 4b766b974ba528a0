package org.plumbrow.calc.forecast;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.plumbrow.calc.planning.Activity;
import org.plumbrow.calc.planning.Crew;
import org.plumbrow.calc.planning.Equipment;
import org.plumbrow.calc.planning.EquipmentNeed;
import org.plumbrow.calc.planning.Fix;
import org.plumbrow.calc.planning.Placement;
import org.plumbrow.calc.planning.PlanningProblem;

/** Numbers the branch's crews and pieces of equipment, and says which of them a step holds. */
final class Claims {

    private final PlanningProblem problem;
    private final DayTables time;
    private final Map<String, Claim> all = new HashMap<>();
    private int units;

    Claims(PlanningProblem problem, DayTables time) {
        this.problem = problem;
        this.time = time;
        for (Crew crew : problem.crews()) {
            number("crew " + crew.id(), 1);
        }
        for (Equipment kind : problem.equipment()) {
            number(kind.id(), kind.count());
        }
    }

    private void number(String name, int count) {
        all.put(name, new Claim(all.size(), units, count, 0));
        units += count;
    }

    int units() {
        return units;
    }

    int kinds() {
        return all.size();
    }

    /** What the plan gave to it; nothing for what is done. */
    Claim[] of(Activity activity, Placement placement) {
        List<Claim> claims = new ArrayList<>();
        if (!(activity.fix() instanceof Fix.Done)) {
            placement.crewId().ifPresent(crew -> claims.add(claim("crew " + crew, 1)));
            for (EquipmentNeed need : activity.equipment()) {
                claims.add(claim(need.equipmentId(), need.count()));
            }
        }
        return claims.toArray(Claim[]::new);
    }

    private Claim claim(String name, int count) {
        Claim kind = all.getOrDefault(name, new Claim(0, 0, 0, 0));
        return new Claim(kind.kind(), kind.firstUnit(), kind.units(), Math.min(count, kind.units()));
    }

    /** Pieces lent out or in repair, as stretches of slots that are held from the outset. */
    void holdAway(Holdings holdings) {
        for (Equipment kind : problem.equipment()) {
            for (Equipment.Away away : kind.away()) {
                int from = time.axis.atOrAfter(away.when().first());
                int to = Math.min(
                        time.lastSlot(), time.axis.atOrBefore(away.when().last()));
                holdings.holdAlways(claim(kind.id(), away.count()), from, to);
            }
        }
    }
}
