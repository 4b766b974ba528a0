package org.plumbrow.crew;

import java.time.LocalDate;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.RouteSamples;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.calc.calendar.Half;
import org.plumbrow.calc.duration.EquipmentKind;
import org.plumbrow.calc.duration.Skill;
import org.plumbrow.database.Ids;
import org.springframework.stereotype.Component;

/** Values for the addresses of the crew pages; a crew and a machine for whoever needs one. */
@Component
public class CrewSamples implements RouteSamples {

    private static final LocalDate FROM = LocalDate.of(2027, 1, 4);

    private final TestWorld world;
    private final CrewEditing crews;
    private final EquipmentEditing equipment;

    CrewSamples(TestWorld world, CrewEditing crews, EquipmentEditing equipment) {
        this.world = world;
        this.crews = crews;
        this.equipment = equipment;
    }

    /** Four people who can do everything, since January 2027. */
    public UUID crew(TestBranch branch, String name, @Nullable UUID leadPersonId) {
        UUID id = Ids.next();
        CrewTerms terms = new CrewTerms(name, 4, 2, Set.of(Skill.values()), leadPersonId, FROM, null);
        world.as(branch.manager(), () -> crews.add(id, branch.id(), terms));
        return id;
    }

    public UUID machine(TestBranch branch, EquipmentKind kind, String name) {
        UUID id = Ids.next();
        world.as(branch.manager(), () -> equipment.add(id, branch.id(), new EquipmentTerms(kind, name, FROM, null)));
        return id;
    }

    /** Away for whole days. */
    public UUID away(TestBranch branch, UUID crewId, LocalDate first, LocalDate last) {
        UUID id = Ids.next();
        AwayTime time = new AwayTime(first, Half.MORNING, last, Half.AFTERNOON, AwayReason.TRAINING, "");
        world.as(branch.manager(), () -> crews.away(id, crewId, time));
        return id;
    }

    @Override
    public Map<String, String> in(TestBranch branch) {
        UUID crew = crew(branch, "Sample crew", null);
        UUID machine = machine(branch, EquipmentKind.LIFT, "Sample lift");
        LocalDate day = LocalDate.of(2027, 9, 6);
        UUID machineAway = Ids.next();
        AwayTime time = new AwayTime(day, Half.MORNING, day, Half.AFTERNOON, AwayReason.REPAIR, "");
        world.as(branch.manager(), () -> equipment.away(machineAway, machine, time));
        return Map.of(
                "crewId", crew.toString(),
                "absenceId", away(branch, crew, day, day).toString(),
                "equipmentId", machine.toString(),
                "equipmentAbsenceId", machineAway.toString());
    }
}
