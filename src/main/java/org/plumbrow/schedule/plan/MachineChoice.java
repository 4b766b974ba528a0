package org.plumbrow.schedule.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.duration.EquipmentKind;
import org.plumbrow.calc.planning.Activity;
import org.plumbrow.calc.planning.EquipmentNeed;
import org.plumbrow.calc.planning.Placement;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.PlanningProblem;

/**
 * Says which machine goes where: the plan only counts them. By start, each to the first machine of its kind that is free
 * then, one that is not away meanwhile before one that is. As the plan never counts more than there are, one is free.
 */
final class MachineChoice {

    private final List<PlanEquipment> machines;
    private final Map<UUID, HalfDay> busyUntil = new HashMap<>();
    private final List<MachineBooking> chosen = new ArrayList<>();

    private MachineChoice(List<PlanEquipment> machines) {
        this.machines = machines;
    }

    static List<MachineBooking> of(PlanningProblem problem, Plan plan, List<PlanEquipment> machines) {
        MachineChoice choice = new MachineChoice(machines);
        Map<String, Activity> activities = new HashMap<>();
        problem.activities().forEach(activity -> activities.put(activity.id(), activity));
        plan.placements().values().stream()
                .filter(placement -> placement.crewId().isPresent())
                .sorted(Comparator.comparing(Placement::start).thenComparing(Placement::activityId))
                .forEach(placement -> activities
                        .get(placement.activityId())
                        .equipment()
                        .forEach(need -> choice.choose(placement, need)));
        return choice.chosen;
    }

    private void choose(Placement placement, EquipmentNeed need) {
        for (int piece = 0; piece < need.count(); piece++) {
            Optional<UUID> machine = machines.stream()
                    .filter(one -> one.kind().name().equals(need.equipmentId()) && isFree(one, placement))
                    .min(Comparator.comparing(one -> isAway(one, placement)))
                    .map(PlanEquipment::id);
            machine.ifPresent(id -> busyUntil.put(id, placement.finish()));
            chosen.add(new MachineBooking(
                    UUID.fromString(placement.activityId()),
                    EquipmentKind.valueOf(need.equipmentId()),
                    machine,
                    placement.start(),
                    placement.finish()));
        }
    }

    private boolean isFree(PlanEquipment machine, Placement placement) {
        HalfDay until = busyUntil.get(machine.id());
        return until == null || until.isBefore(placement.start());
    }

    private static boolean isAway(PlanEquipment machine, Placement placement) {
        return machine.absences().stream()
                .anyMatch(absence -> !absence.last().isBefore(placement.start())
                        && !absence.first().isAfter(placement.finish()));
    }
}
