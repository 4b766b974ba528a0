package org.plumbrow.schedule.plan;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.plumbrow.calc.duration.Skill;
import org.plumbrow.calc.planning.Absence;

/** A crew as the plan needs it. @param people how many come to a site */
public record PlanCrew(UUID id, String name, int people, Set<Skill> skills, List<Absence> absences) {

    public PlanCrew {
        skills = Set.copyOf(skills);
        absences = List.copyOf(absences);
    }
}
