package org.plumbrow.crew;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toList;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.plumbrow.account.BranchPeople;
import org.plumbrow.database.ReadOnce;
import org.plumbrow.web.Access;
import org.plumbrow.web.NaturalOrder;
import org.plumbrow.web.NotFound;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * The crews and shared machines of a branch, for the plan and for whoever names one. A visitor gets those of their own
 * branches; work in the background whatever the wall's scope holds.
 */
@Service
@Transactional(readOnly = true)
public class Crews {

    private final CrewRows crews;
    private final CrewAbsences crewAbsences;
    private final MachineRows machines;
    private final MachineAbsences machineAbsences;
    private final BranchPeople people;
    private final Access access;

    Crews(
            CrewRows crews,
            CrewAbsences crewAbsences,
            MachineRows machines,
            MachineAbsences machineAbsences,
            BranchPeople people,
            Access access) {
        this.crews = crews;
        this.crewAbsences = crewAbsences;
        this.machines = machines;
        this.machineAbsences = machineAbsences;
        this.people = people;
        this.access = access;
    }

    /**
     * All crews and machines in five queries.
     *
     * @param since absences that ended before are left out
     */
    public CrewsOfBranch of(UUID branchId, LocalDate since) {
        return new CrewsOfBranch(crews(branchId, since), equipment(branchId, since));
    }

    /** All crews by name, in three queries; once a page. */
    public List<CrewFacts> crews(UUID branchId, LocalDate since) {
        mayRead(branchId);
        return ReadOnce.of(new CrewsSince(branchId, since), () -> readCrews(branchId, since));
    }

    private record CrewsSince(UUID branchId, LocalDate day) {}

    private List<CrewFacts> readCrews(UUID branchId, LocalDate since) {
        List<Crew> rows = crews.findByBranchIdOrderByNameAscIdAsc(branchId).stream()
                .sorted(Comparator.comparing(Crew::name, NaturalOrder.OF_NAMES))
                .toList();
        Map<UUID, List<Away>> away = crewAbsences.since(branchId, since).stream()
                .collect(groupingBy(CrewAbsence::crewId, mapping(CrewAbsence::away, toList())));
        Map<UUID, String> leads = people.names(
                rows.stream().map(Crew::leadPersonId).filter(Objects::nonNull).collect(Collectors.toSet()));
        return rows.stream()
                .map(crew -> crew.facts(leadName(leads, crew), away.getOrDefault(crew.id(), List.of())))
                .toList();
    }

    private static String leadName(Map<UUID, String> leads, Crew crew) {
        return crew.leadPersonId() == null ? "" : leads.getOrDefault(crew.leadPersonId(), "");
    }

    /** All shared machines by name, in two queries. */
    public List<EquipmentFacts> equipment(UUID branchId, LocalDate since) {
        mayRead(branchId);
        Map<UUID, List<Away>> away = machineAbsences.since(branchId, since).stream()
                .collect(groupingBy(MachineAbsence::equipmentId, mapping(MachineAbsence::away, toList())));
        return machines.findByBranchIdOrderByNameAscIdAsc(branchId).stream()
                .sorted(Comparator.comparing(Machine::name, NaturalOrder.OF_NAMES))
                .map(machine -> machine.facts(away.getOrDefault(machine.id(), List.of())))
                .toList();
    }

    /** One crew with all its absences. */
    public Optional<CrewFacts> crew(UUID crewId) {
        return crews.findById(crewId).map(crew -> {
            mayRead(crew.branchId());
            Map<UUID, String> lead =
                    people.names(Stream.ofNullable(crew.leadPersonId()).toList());
            return crew.facts(
                    leadName(lead, crew),
                    crewAbsences.of(crewId).stream().map(CrewAbsence::away).toList());
        });
    }

    /** One shared machine with all its absences. */
    public Optional<EquipmentFacts> machine(UUID equipmentId) {
        return machines.findById(equipmentId).map(machine -> {
            mayRead(machine.branchId());
            return machine.facts(machineAbsences.of(equipmentId).stream()
                    .map(MachineAbsence::away)
                    .toList());
        });
    }

    /** The crews of the branch that the person leads, by name, those included that have ended. */
    public List<UUID> crewsLedBy(UUID branchId, UUID personId) {
        return crews.ledBy(branchId, personId);
    }

    private void mayRead(UUID branchId) {
        access.present().ifPresent(visitor -> visitor.branch(branchId).orElseThrow(NotFound::new));
    }
}
