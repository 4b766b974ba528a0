package org.plumbrow.schedule.plan;

import java.util.List;
import java.util.UUID;
import org.plumbrow.calc.duration.EquipmentKind;
import org.plumbrow.calc.planning.Absence;

/** A shared machine as the plan needs it. */
public record PlanEquipment(UUID id, String name, EquipmentKind kind, List<Absence> absences) {

    public PlanEquipment {
        absences = List.copyOf(absences);
    }
}
