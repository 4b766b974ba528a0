package org.plumbrow.calc.planning;

import java.util.HashMap;
import java.util.Map;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.calendar.HalfDay;

/** The rule about equipment: on no working half-day is more of it in use than there is. */
final class EquipmentRules {

    private final PlanCheck check;
    private final HalfDayCount count;
    private final Map<String, Equipment> equipment = new HashMap<>();
    private final Map<Use, Integer> used = new HashMap<>();

    private record Use(String equipmentId, HalfDay at) {}

    EquipmentRules(PlanCheck check) {
        this.check = check;
        count = new HalfDayCount(check.problem);
        check.problem.equipment().forEach(kind -> equipment.put(kind.id(), kind));
    }

    void checkAll() {
        for (Activity activity : check.problem.activities()) {
            if (!(activity.fix() instanceof Fix.Done)) {
                check.plan
                        .of(activity.id())
                        .ifPresent(placement -> activity.equipment().forEach(need -> use(activity, placement, need)));
            }
        }
        for (Activity activity : check.problem.activities()) {
            if (!(activity.fix() instanceof Fix.Done)) {
                check.plan
                        .of(activity.id())
                        .ifPresent(
                                placement -> activity.equipment().forEach(need -> isThere(activity, placement, need)));
            }
        }
    }

    private void use(Activity activity, Placement placement, EquipmentNeed need) {
        for (HalfDay at = placement.start(); !at.isAfter(placement.finish()); at = at.next()) {
            if (count.isWorking(at)) {
                used.merge(new Use(need.equipmentId(), at), need.count(), Integer::sum);
            }
        }
    }

    private void isThere(Activity activity, Placement placement, EquipmentNeed need) {
        for (HalfDay at = placement.start(); !at.isAfter(placement.finish()); at = at.next()) {
            int there = there(need.equipmentId(), at);
            int inUse = used.getOrDefault(new Use(need.equipmentId(), at), 0);
            if (inUse > there) {
                check.breach(
                        Breach.Rule.EQUIPMENT,
                        activity,
                        "%s needs %s on %s: %d in use, %d there."
                                .formatted(
                                        check.name(activity),
                                        check.words.equipment(need.equipmentId()),
                                        DayWords.of(at.date()),
                                        inUse,
                                        there));
                return;
            }
        }
    }

    private int there(String equipmentId, HalfDay at) {
        Equipment kind = equipment.get(equipmentId);
        if (kind == null) {
            return 0;
        }
        int away = kind.away().stream()
                .filter(gone -> gone.when().holds(at))
                .mapToInt(Equipment.Away::count)
                .sum();
        return kind.count() - away;
    }
}
