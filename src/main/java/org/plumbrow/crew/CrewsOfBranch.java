package org.plumbrow.crew;

import java.util.List;

/** All crews and shared machines of a branch, by name, with the absences asked for; ended ones included. */
public record CrewsOfBranch(List<CrewFacts> crews, List<EquipmentFacts> equipment) {}
