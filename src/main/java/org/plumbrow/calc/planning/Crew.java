package org.plumbrow.calc.planning;

import java.util.List;
import java.util.Set;

/** People who work together, at one thing at a time. */
public record Crew(String id, String name, Set<String> skills, List<Absence> absences) {

    public Crew {
        skills = Set.copyOf(skills);
        absences = List.copyOf(absences);
    }
}
